import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { dayNumber, type Evidence, type EvidenceCode } from '../../../engine/src/index.ts';
import { evidenceSentence } from '../../src/index.ts';

await loadLater();
await loadLanguage('es');
const [british, american, spanish] = [speaker('metric'), speaker('us'), speaker('metric', 'es')];
const day = dayNumber(2027, 5, 12);

type Case<Code extends EvidenceCode> = {
  of: Extract<Evidence, { code: Code }>;
  /** What the sentence has to say, and what it says in American units where these differ. */
  says: readonly string[];
  us?: readonly string[];
};

const cases: { [Code in EvidenceCode]: Case<Code> } = {
  'run-with-and-without': {
    of: { code: 'run-with-and-without', withTenths: 8, withoutTenths: 1 },
    says: ['in 8 seasons in 10', 'in 1 season in 10'],
  },
  'run-only-if': {
    of: { code: 'run-only-if', ifTenths: 7, asToldTenths: 0 },
    says: ['in hardly any season;', 'put in, in 7 seasons in 10'],
  },
  'run-no-matter': {
    of: { code: 'run-no-matter', withTenths: 10, withoutTenths: 9 },
    says: ['in nearly every season with this cause', 'and in 9 seasons in 10 without it'],
  },
  'longest-day': {
    of: { code: 'longest-day', longestH: 13.5, neededH: 15.25 },
    says: ['up for 13 h 30 min', '15 h 15 min before'],
  },
  'needed-day-comes': {
    of: { code: 'needed-day-comes', day, neededH: 14 },
    says: ['of 14 h', '12 May'],
    us: ['of 14 h', 'May 12'],
  },
  'bulbs-began': {
    of: { code: 'bulbs-began', day, leaves: 6.4 },
    says: ['12 May', '6 leaves'],
    us: ['May 12', '6 leaves'],
  },
  'never-began': { of: { code: 'never-began', leaves: 1.2 }, says: ['1 leaf is made'] },
  'leaves-if-earlier': {
    of: { code: 'leaves-if-earlier', weeks: 3, leaves: 9, mm: 61 },
    says: ['3 weeks earlier', '9 leaves', '61 mm'],
    us: ['3 weeks earlier', '9 leaves', '2.4 in'],
  },
  'bulbs-without': { of: { code: 'bulbs-without', mm: 32 }, says: ['32 mm'], us: ['1.3 in'] },
  'size-without': {
    of: { code: 'size-without', mm: 61, asToldMm: 32 },
    says: ['about 61 mm across; with it, 32 mm'],
    us: ['about 2.4 in across; with it, 1.3 in'],
  },
  'ripens-without': {
    of: { code: 'ripens-without', day },
    says: ['down about 12 May'],
    us: ['about May 12'],
  },
  'cold-met': {
    of: { code: 'cold-met', weeks: 1, plantsTenths: 4 },
    says: ['1 week of cold', '4 plants in 10'],
  },
  'flowering-without': {
    of: { code: 'flowering-without', plantsTenths: 1, asToldTenths: 6 },
    says: ['with this cause: 6 plants in 10', 'without it: 1 plant in 10'],
  },
  'set-size': {
    of: { code: 'set-size', mm: 25, plantsTenths: 6, smallMm: 14, smallTenths: 0 },
    says: ['sets of 25 mm: 6 plants in 10', 'sets of 14 mm: hardly any'],
    us: ['sets of 1 in: 6 plants in 10', 'sets of 0.6 in: hardly any'],
  },
  'sets-not-said': { of: { code: 'sets-not-said', plantsTenths: 5 }, says: ['5 plants in 10'] },
  'winter-losses': {
    of: { code: 'winter-losses', plantsTenths: 7, coldestC: -20 },
    says: ['7 plants in 10', '-20°C'],
    us: ['7 plants in 10', '-4°F'],
  },
  'frost-lifted': { of: { code: 'frost-lifted', plantsTenths: 2 }, says: ['2 plants in 10'] },
  'thirsty-days': { of: { code: 'thirsty-days', days: 17 }, says: ['17 days'] },
  'mean-warmth': { of: { code: 'mean-warmth', tempC: 25 }, says: ['25°C'], us: ['77°F'] },
  'plants-per-m2': {
    of: { code: 'plants-per-m2', perM2: 140, usualPerM2: 40 },
    says: ['at 140 plants per m²; usual are 40 plants per m²'],
    us: ['at 13 plants per square foot; usual are 3.7 plants per square foot'],
  },
  'sun-hours': { of: { code: 'sun-hours', hours: 3.5 }, says: ['4 hours of sun'] },
  'at-home': { of: { code: 'at-home', type: 'intermediate' }, says: ['Intermediate-day onions'] },
  'soil-at-start': {
    of: { code: 'soil-at-start', tempC: 5, upTenths: 3 },
    says: ['5°C', '3 seeds in 10'],
    us: ['41°F', '3 seeds in 10'],
  },
  'store-air': {
    of: { code: 'store-air', tempC: 20, humidityPct: 71.6 },
    says: ['20°C', '72% humidity'],
    us: ['68°F', '72% humidity'],
  },
  'store-coldest': { of: { code: 'store-coldest', tempC: -5 }, says: ['-5°C'], us: ['23°F'] },
  'keeps-usually': {
    of: { code: 'keeps-usually', fromMonths: 3, toMonths: 5, keptMonths: 6.2 },
    says: ['keeps 3–5 months', 'kept for 6 months'],
  },
  'bulbs-lost': {
    of: { code: 'bulbs-lost', lossTenths: 6, withoutTenths: 1 },
    says: [': 6 bulbs in 10;', 'cause: 1 bulb in 10'],
  },
  'flies-came': { of: { code: 'flies-came', day }, says: ['12 May'], us: ['May 12'] },
  'wet-spells': { of: { code: 'wet-spells', tenths: 8 }, says: ['in 8 seasons in 10'] },
  'warm-soil': { of: { code: 'warm-soil', tempC: 25 }, says: ['25°C'], us: ['77°F'] },
  'hot-and-dry': {
    of: { code: 'hot-and-dry', tempC: 25, rainMm: 30 },
    says: ['25°C and 30 mm of rain'],
    us: ['77°F and 1.2 in of rain'],
  },
  'drying-took': { of: { code: 'drying-took', days: 24.6 }, says: ['25 days'] },
  'goes-with': { of: { code: 'goes-with', symptom: 'thick-necks' }, says: ['“Thick necks” often'] },
  'not-with': { of: { code: 'not-with', symptom: 'maggots' }, says: ['“Maggots inside” hardly ever'] },
  said: {
    of: { code: 'said', question: 'stems-before-cold', answer: 'thicker' },
    says: ['How thick were the stems when the cold came? “Thicker than a pencil”, you said.'],
  },
  'plan-says': { of: { code: 'plan-says', field: 'water', start: 'sets' }, says: ['said of watering'] },
};

// the locale sets units apart by spaces and signs of its own
const plain = (sentence: string) =>
  sentence
    .replace(/\s*–\s*/g, '–')
    .replace(/[\u00a0\u202f\u2009]/g, ' ')
    .replace(/\u2212/g, '-');

describe.each(Object.values(cases))('evidence of $of.code', ({ of, says, us = says }) => {
  test('says its numbers, and in American units to Americans', () => {
    const told = plain(evidenceSentence(of, british));
    for (const part of says) expect(told).toContain(part);
    const inUs = plain(evidenceSentence(of, american));
    for (const part of us) expect(inUs).toContain(part);
    expect(told).toMatch(/^[“\p{Lu}].*\.$/u);
  });

  test('has a Spanish sentence with the same numbers', () => {
    // "4 de cada 10" as in "4 plants in 10"; one of a thing may be a word
    const numbers = (text: string) =>
      (plain(text).match(/\d+/g) ?? []).filter((number) => number !== '1').sort();
    const told = evidenceSentence(of, spanish);
    expect(numbers(told)).toEqual(numbers(evidenceSentence(of, british)));
    expect(told).not.toMatch(/\b(the|of|about|seasons?|plants?)\b/);
  });
});

test('what the plan says of sets is another thing where no sets were planted', () => {
  const said = (
    field: 'water' | 'density' | 'sun' | 'set-size' | 'set-store',
    start: 'sets' | 'direct-seed',
  ) => evidenceSentence({ code: 'plan-says', field, start }, british);
  expect(said('set-size', 'direct-seed')).toBe('These were not grown from sets (sown in place).');
  expect(said('set-store', 'direct-seed')).toBe(said('set-size', 'direct-seed'));
  const fields = ['water', 'density', 'sun', 'set-size', 'set-store'] as const;
  expect(new Set(fields.map((field) => said(field, 'sets'))).size).toBe(fields.length);
});

test('a kind that keeps for one span of months is told so', () => {
  const kept = { code: 'keeps-usually', fromMonths: 5, toMonths: 5, keptMonths: 1 } as const;
  expect(evidenceSentence(kept, british)).toContain('keeps 5 months; these were kept for 1 month.');
});
