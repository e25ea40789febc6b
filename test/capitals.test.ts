import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const packages = fileURLToPath(new URL('../packages/', import.meta.url));
/** Names of columns, which no message file has. */
const columnNames = join('cli', 'src', 'documents', 'when-csv.ts');

test('no code makes capitals of what a reader sees: messages have them', () => {
  const files = ['words', 'answers', 'cli', 'app']
    .flatMap((name) =>
      readdirSync(join(packages, name, 'src'), { recursive: true, encoding: 'utf8' }).map((file) =>
        join(name, 'src', file),
      ),
    )
    .filter((file) => /\.tsx?$/.test(file) && file !== columnNames);
  const makers = files.filter((file) =>
    /toUpperCase|toLocaleUpperCase/.test(readFileSync(join(packages, file), 'utf8')),
  );
  expect(files.length).toBeGreaterThan(100);
  expect(makers).toEqual([]);
});
