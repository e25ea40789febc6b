import { expect, test } from 'vitest';
import { stillFigure } from '../../src/index.ts';

const figure = {
  svg: '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><title>t</title></svg>\n',
  title: 'The year: Bank & bed',
  summary: 'Most rain comes in "July" <b>',
  caption: ['Neckfall · Lyon', '<script>alert(1)</script>'],
  table: {
    caption: 'Months',
    head: ['Month', 'Rain'],
    rows: [
      ['May', ''],
      ['June', '<i>'],
    ],
  },
  lang: 'en-GB',
};

test('a still figure has the picture with what it says, its source and its numbers', () => {
  const page = stillFigure(figure);
  expect(page).toMatch(/^<!doctype html>\n<html lang="en-GB">/);
  expect(page).toContain('<title>The year: Bank &amp; bed</title>');
  expect(page).toContain('<svg role="img" aria-label="Most rain comes in &quot;July&quot; &lt;b&gt;" xmlns');
  expect(page).toContain('<p>Neckfall · Lyon</p>');
  expect(page).toContain('<tr><th scope="row">May</th><td></td></tr>');
});

test('it runs nothing and asks for nothing, whatever its words are', () => {
  const page = stillFigure(figure);
  expect(page).toContain(`content="default-src 'none'; style-src 'unsafe-inline'"`);
  expect(page).not.toMatch(
    /<(script|b|i|img|link|iframe)[ >]|\bon\w+=|https?:\/\/(?!www\.w3\.org\/2000\/svg)/,
  );
});

test('where there is more to tell than one table holds, two follow', () => {
  const also = { caption: 'Work', head: ['No.', 'What'], rows: [['1', 'weed']] };
  const tables = (page: string) => page.match(/<table>/g)?.length ?? 0;
  expect(tables(stillFigure(figure))).toBe(1);
  expect(tables(stillFigure({ ...figure, also }))).toBe(2);
  expect(tables(stillFigure({ ...figure, table: null }))).toBe(0);
});
