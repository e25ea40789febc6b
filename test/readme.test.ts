import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
// @ts-expect-error plain JavaScript: it runs before anything is installed
import { examplesIn, outputOf } from '../tools/setup/readme-examples.mjs';

const root = new URL('../', import.meta.url);
const pages = ['README.md', 'CONTRIBUTING.md', 'CHANGELOG.md'];
/** Pages whose commands are run. */
const shown = ['README.md', 'docs/weather-files.md'];
const read = (page: string) => readFileSync(new URL(page, root), 'utf8');
const examples: { command: string; output: string }[] = shown.flatMap((page) => examplesIn(read(page)));

/** Locale data of other Node versions put other spaces into ranges. */
const spacesAlike = (text: string) => text.replace(/[\u00a0\u2009\u202f ]+/g, ' ');

describe('the pages that show commands', () => {
  test('do so', () => expect(examples.length).toBeGreaterThanOrEqual(4));

  // when an answer has changed for good: node tools/setup/refresh-readme.mjs
  test.each(examples)('show what is printed by $command', ({ command, output }) => {
    expect(spacesAlike(output)).toBe(spacesAlike(outputOf(command)));
  });
});

test.each(pages)('links of %s lead to files that exist', (page) => {
  const links = [...read(page).matchAll(/\]\((?!https?:|#)([^)#]+)/g)].map((match) => match[1]);
  expect(links.filter((link) => !existsSync(new URL(link, root)))).toEqual([]);
});
