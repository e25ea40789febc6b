import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { readMessage } from '../src/message.ts';

// source: the message format of Unicode ICU, as the whole formatter of intl-messageformat fills it
describe('a message is filled as the message format fills it', () => {
  test.each([
    ['Sow {what} by {date}.', { what: 'seed', date: '3 May' }],
    ['{count, plural, offset:1 =0 {none} one {one more than #} other {# more}}', { count: 2 }],
    ['{count, plural, one {# bulb} other {# bulbs}}', { count: 1500 }],
    ['{at, selectordinal, one {#st} two {#nd} few {#rd} other {#th}}', { at: 3 }],
    ["'{braces}' and {name}", { name: 'Lyon' }],
    ['{hours, number} h {minutes, number, ::00} min', { hours: 1234.5678, minutes: 4 }],
    ['{way, select, later {later} other {some day}}', { way: 'later' }],
  ])('%s', (pattern, values) => {
    expect(readMessage(pattern, 'en-GB')(values as Record<string, string | number>)).toBe(
      new IntlMessageFormat(pattern, 'en-GB').format(values),
    );
  });

  test('as the locale has it', () => {
    expect(readMessage('{rows, number} rows', 'en-GB')({ rows: 12_345 })).toBe('12,345 rows');
    expect(readMessage('{rows, number} filas', 'es')({ rows: 12_345 })).toBe('12.345 filas');
  });
});

test('a word that every object has by nature is no choice of a message', () => {
  const chosen = readMessage('{what, select, seed {sown} other {planted}}', 'en-GB');
  for (const what of ['constructor', 'toString', '__proto__', 'hasOwnProperty'])
    expect(chosen({ what })).toBe('planted');
});

test('a missing value is told by its name, and a broken message by its fault', () => {
  expect(() => readMessage('Sow {what} now.', 'en-GB')({})).toThrow('"what"');
  expect(() => readMessage('{n, number}', 'en-GB')()).toThrow('"n"');
  expect(() => readMessage('{name', 'en-GB')).toThrow(SyntaxError);
});
