import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { fillGrammar, readGrammar } from '../src/grammar.ts';
import { allMessages, usEnglish } from '../src/index.ts';
import { readPlain } from '../src/plain.ts';

type Element = { type: number; value?: string; options?: Record<string, { value: Element[] }> };
const [number, select, plural] = [2, 5, 6];

/** For every value a message asks for, some that take each of its ways. */
function valuesOf(elements: readonly Element[], found: Record<string, (string | number)[]> = {}) {
  for (const { type, value = '', options = {} } of elements) {
    if (type === 0 || type === 7) continue;
    found[value] ??= [];
    const known = found[value];
    if (type === number) known.push(0, 7, 1234.5678, -3);
    else if (type === plural) known.push(0, 1, 2, 21, 1500);
    else if (type === select) known.push(...Object.keys(options), 'something else');
    else if (known.length === 0) known.push('Lyon');
    for (const option of Object.values(options)) valuesOf(option.value, found);
  }
  return found;
}

// source: the message format of Unicode ICU, as the library intl-messageformat fills it
describe('messages with grammar', () => {
  const all = [...Object.values(allMessages()), ...Object.values(usEnglish)];
  const withGrammar = all.filter((pattern) => readPlain(pattern) === null);

  test('are filled as the message format fills them, whatever the values', () => {
    expect(withGrammar.length).toBeGreaterThan(20);
    for (const pattern of withGrammar) {
      const message = readGrammar(pattern);
      const whole = new IntlMessageFormat(pattern, 'en-GB');
      const choices = valuesOf(message as Element[]);
      const most = Math.max(...Object.values(choices).map((values) => values.length));
      for (let at = 0; at < most * 2; at++) {
        const values = Object.fromEntries(
          Object.entries(choices).map(([name, known], nth) => [
            name,
            known[(at + (at >= most ? nth : 0)) % known.length],
          ]),
        );
        expect(fillGrammar(message, values, 'en-GB')).toBe(whole.format(values));
      }
    }
  });

  test.each([
    ['{count, plural, offset:1 =0 {none} one {one more than #} other {# more}}', { count: 2 }],
    ['{at, selectordinal, one {#st} two {#nd} few {#rd} other {#th}}', { at: 3 }],
    ["'{braces}' and {name}", { name: 'Lyon' }],
  ])('%s too', (pattern, values) => {
    const known = new IntlMessageFormat(pattern, 'en-GB').format(values);
    expect(fillGrammar(readGrammar(pattern), values as Record<string, number>, 'en-GB')).toBe(known);
  });

  test('a missing value, a date and a time are errors', () => {
    expect(() => fillGrammar(readGrammar('{n, number}'), {}, 'en-GB')).toThrow('{n}');
    expect(() => fillGrammar(readGrammar('{n, date}'), { n: 1 }, 'en-GB')).toThrow('{n}');
  });
});
