import { parse } from '@formatjs/icu-messageformat-parser';
import { describe, expect, test } from 'vitest';
import { allMessages, languages, loadLanguage, speaker, spokenOf } from '../src/index.ts';

const english = await allMessages('en');

type Element = { type: number; value?: string; options?: Record<string, { value: Element[] }> };
const [literal, select] = [0, 5];

/** The values that a message needs, the choices it makes by them, and all that it may say. */
function partsOf(message: string): { values: Set<string>; choices: Set<string>; said: string[] } {
  const values = new Set<string>();
  const choices = new Set<string>();
  const said: string[] = [];
  const visit = (elements: readonly Element[]) => {
    for (const { type, value = '', options = {} } of elements) {
      if (type === literal) said.push(value);
      else if (value) values.add(value);
      for (const [name, option] of Object.entries(options)) {
        if (type === select) choices.add(`${value}: ${name}`);
        visit(option.value);
      }
    }
  };
  visit(parse(message) as Element[]);
  return { values, choices, said };
}

describe.each(languages.filter((language) => language !== 'en'))('the messages of %s', async (language) => {
  const messages = await allMessages(language);

  test('are those of English: none is missing and none is left over', () => {
    const keys = new Set(Object.keys(messages));
    expect({
      missing: Object.keys(english).filter((key) => !keys.has(key)),
      leftOver: [...keys].filter((key) => !Object.hasOwn(english, key)),
    }).toEqual({ missing: [], leftOver: [] });
  });

  test('need the values that those of English need, and choose by their words', () => {
    const wrong = Object.entries(messages).flatMap(([key, message]) => {
      if (!Object.hasOwn(english, key)) return [];
      const [own, known] = [partsOf(message), partsOf(english[key])];
      const lost = [...known.values].filter((value) => !own.values.has(value));
      const strange = [...own.values].filter((value) => !known.values.has(value));
      const choices = [...own.choices].filter((choice) => !known.choices.has(choice));
      return lost.length + strange.length + choices.length > 0 ? [{ key, lost, strange, choices }] : [];
    });
    expect(wrong).toEqual([]);
  });

  test('are plain sentences, in words of their own', () => {
    const bad = /[<>]| {2}|^ .| $/;
    // codes such as direct-seed are the same in every language
    const kept = /(?<!-)\b(the|and|of|with|in|onions?|bulbs?|years?|tops|seed)\b/i;
    for (const [key, message] of Object.entries(messages)) {
      const word = kept.exec(partsOf(message).said.join(' '))?.[0];
      expect({ key, bad: bad.exec(message)?.[0], word }).toEqual({ key, bad: undefined, word: undefined });
    }
  });
});

test('the language wanted is the first that is spoken', () => {
  expect(spokenOf(['fr-FR', 'es-MX', 'en'])).toBe('es');
  expect(spokenOf(['es_ES.UTF-8'])).toBe('es');
  expect(spokenOf(['C', 'constructor', ''])).toBe('en');
  expect(spokenOf([])).toBe('en');
});

test('Spanish speaks of numbers, dates, lists and countries as its readers do', async () => {
  await loadLanguage('es');
  const { all, any, country, day, dayWithYear, number, units, quantity, years } = speaker('us', 'es');
  expect(units).toBe('us');
  expect(day(20_819)).toBe('1 de enero');
  expect(dayWithYear(20_819)).toBe('1 de enero de 2027');
  expect(number(12_345.6, 1)).toBe('12.345,6');
  expect([all(['ajos', 'inviernos']), any(['siete', 'ocho'])]).toEqual(['ajos e inviernos', 'siete u ocho']);
  expect(country('GB')).toBe('Reino Unido');
  expect(quantity('temperature', 20)).toMatch(/^68\s°F$/);
  expect(years(0.7, 30)).toBe('en 7 de cada 10 años');
});
