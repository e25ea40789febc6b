import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { allMessages, type MessageKey, usEnglish } from '../src/index.ts';

const english = await allMessages('en');
const american = await usEnglish();

type Element = { type: number; value?: string; options?: Record<string, { value: Element[] }> };
const literal = 0;

/** Names of the values a message needs. */
function placeholders(message: string): string[] {
  const names = new Set<string>();
  const visit = (elements: readonly Element[]) => {
    for (const element of elements) {
      if (element.type !== literal && element.value !== undefined) names.add(element.value);
      for (const option of Object.values(element.options ?? {})) visit(option.value);
    }
  };
  visit(new IntlMessageFormat(message, 'en-GB').getAst() as Element[]);
  return [...names].sort();
}

describe('message files', () => {
  test('every message can be read', () => {
    for (const message of Object.values(english)) expect(() => placeholders(message)).not.toThrow();
  });

  test('American messages replace existing ones and use no value the others lack', () => {
    for (const [key, message] of Object.entries(american)) {
      expect(Object.keys(english)).toContain(key);
      const known = placeholders(english[key as MessageKey]);
      expect(known).toEqual(expect.arrayContaining(placeholders(message)));
    }
  });

  test('never say a word of the code to a gardener', () => {
    const words =
      /\b(class|ensemble|verdict|prior|outcome share|onset|neck fall|photoperiod|p10|p50|p90|not-ripe|winter-killed)\b/i;
    for (const [key, message] of Object.entries({ ...english, ...american })) {
      const said = message.replace(/\{[^{}]*\}/g, '').replace(/--[a-z-]+/g, '');
      expect({ key, word: words.exec(said)?.[0] }).toEqual({ key, word: undefined });
    }
  });

  test('claim no more than was tried, and no error that is the same everywhere', () => {
    const claims =
      /every year tried|any week of the year|any day of the year|few growers|a week out|weights a third/i;
    for (const [key, message] of Object.entries({ ...english, ...american })) {
      expect({ key, claim: claims.exec(message)?.[0] }).toEqual({ key, claim: undefined });
    }
  });

  test('leave no British word in the American voice', () => {
    const british =
      /\b(autumn\w*|lift\w*|colour\w*|grey|plough\w*|neighbour\w*|(centi|milli|kilo)?metres?|litres?|licences?|fleece|spring onions?|air frosts?|dear|dearer|dearest|leads|compost|bare-rooted|favour\w*|mould\w*|(go|goes|going|gone|went) over|tops are over)\b/i;
    for (const [key, message] of Object.entries({ ...english, ...american })) {
      // what is dug in has one name on either side, what trays are filled with has two
      const dugIn = /\b(bed|feed)\b/.test(key) ? /\bcompost\b/gi : /$^/;
      const said = message.replace(/\{\w+(\}|, \w+,)/g, '').replace(dugIn, '');
      expect({ key, word: british.exec(said)?.[0] }).toEqual({ key, word: undefined });
    }
  });

  test('are plain sentences: no markup, no doubled or stray spaces', () => {
    for (const [key, message] of Object.entries(english)) {
      expect({ key, bad: /[<>]| {2}|^ .| $/.exec(message)?.[0] }).toEqual({ key, bad: undefined });
    }
  });
});
