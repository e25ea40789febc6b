import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const read = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => ({ file, text: readFileSync(join(folder, file), 'utf8') }));

test('what only the command line says is never said by the app, which is built without it', () => {
  const keys = read('packages/words/src/en/command-line').flatMap(({ text }) =>
    [...text.matchAll(/^ {2}'([^']+)'/gm)].map(([, key]) => key),
  );
  expect(keys.length).toBeGreaterThan(80);
  // a key made in code begins with what all of its kind begin with
  const kinds = [...new Set(keys.map((key) => key.slice(0, key.indexOf('.') + 1)))];
  for (const { file, text } of [
    ...read('packages/app/src'),
    ...read('packages/answers/src'),
    ...read('packages/pictures/src'),
  ])
    for (const kind of kinds)
      expect(text.includes(`'${kind}`) || text.includes(`\`${kind}`), `${file}: ${kind}`).toBe(false);
});
