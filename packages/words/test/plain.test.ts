import { IntlMessageFormat } from 'intl-messageformat';
import { expect, test } from 'vitest';
import { allMessages, usEnglish } from '../src/index.ts';
import { fillPlain, readPlain } from '../src/plain.ts';

const english = allMessages();

/** A value for every name a message could ask for. */
const values = (pattern: string) =>
  Object.fromEntries(
    [...pattern.matchAll(/\{(\w+)\}/g)].map(([, name], at) => [name, at % 2 ? at : `<${name}>`]),
  );

// source: the message format of Unicode ICU, as the library intl-messageformat reads it
test('messages cut at their values read as the message format reads them', () => {
  const all = [...Object.values(english), ...Object.values(usEnglish)];
  const cut = all.filter((pattern) => readPlain(pattern) !== null);
  expect(cut.length).toBeGreaterThan(all.length / 2);
  for (const pattern of cut) {
    const whole = new IntlMessageFormat(pattern, 'en-GB');
    expect(fillPlain(readPlain(pattern)!, values(pattern))).toBe(whole.format(values(pattern)));
  }
});

test.each([
  '{count, plural, one {# bulb} other {# bulbs}}',
  '{share, number, percent}',
  "a quoted '{name}'",
  "two marks '' are one",
  '{name',
])('%s is left to the message format', (pattern) => {
  expect(readPlain(pattern)).toBeNull();
});

test('a missing value is told by its name', () => {
  expect(() => fillPlain(readPlain('Sow {what} now.')!, {})).toThrow('{what}');
});
