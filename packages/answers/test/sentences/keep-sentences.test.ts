import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { expect, test } from 'vitest';
import { usualGramsPerWeek } from '../../../data/src/index.ts';
import { dayNumber, type StoredNow } from '../../../engine/src/index.ts';
import {
  keepCautions,
  keepEatFirst,
  keepGapSentence,
  keepGrounds,
  keepHeadline,
  keepLotSentence,
  keepUnmetSentence,
  shoppingOf,
  shoppingSentence,
  storedEatFirst,
  storedSentence,
  useSource,
} from '../../src/index.ts';
import { bought, keepYearWith, sets, sown, trays } from './keep-year.ts';

await loadLater();
await loadLanguage('es');
const metric = speaker('metric');
const us = speaker('us');
const today = dayNumber(2027, 2, 1);
// the locale sets dates of a range apart by spaces of its own
const plain = (sentence: string) => sentence.replace(/\s*–\s*/g, '–').replace(/[  ]/g, ' ');

test('the answer: how much, until when, and when it is bare', () => {
  expect(plain(keepHeadline(keepYearWith({}), today, metric))).toBe(
    'Plant 4.5 m²: 180 plants in two lots; the last keepers go about 20 May 2028, and in a poor year the store is bare 1–30 June.',
  );
  const other = { ...sets, kind: { ...sets.kind, type: 'intermediate' as const } };
  expect(plain(keepHeadline(keepYearWith({ lots: [other, trays] }), today, metric))).toContain(
    'of two kinds',
  );
  expect(plain(keepHeadline(keepYearWith({ gaps: [] }), today, us))).toContain('never runs out');
  expect(plain(keepHeadline(keepYearWith({}), today, us))).toContain('48 square feet');
  // what comes after the longest gap is the next year's
  const next = {
    ...sets,
    ready: { share: 1, days: { p10: 0, p50: dayNumber(2028, 7, 1), p90: 0 } },
    lastsUntil: { share: 1, days: { p10: 0, p50: dayNumber(2028, 9, 9), p90: 0 } },
  };
  expect(keepHeadline(keepYearWith({ lots: [trays, next] }), today, metric)).toContain('20 May 2028');
  // what can be started next year only is a keeper of every year all the same
  const later = { ...trays, lastsUntil: { share: 1, days: { p10: 0, p50: dayNumber(2029, 5, 20), p90: 0 } } };
  expect(keepHeadline(keepYearWith({ lots: [sets, later] }), today, metric)).toContain('20 May 2029');
  const early = { ...next, ready: { share: 1, days: { p10: 0, p50: dayNumber(2028, 5, 25), p90: 0 } } };
  expect(keepHeadline(keepYearWith({ lots: [trays, early] }), today, metric)).toContain('20 May 2028');
  // a gap of poor years alone is outlasted by the old crop in most
  const outlasts = {
    ...trays,
    lastsUntil: { share: 1, days: { p10: 0, p50: dayNumber(2028, 7, 20), p90: 0 } },
  };
  expect(keepHeadline(keepYearWith({ lots: [sets, outlasts, next] }), today, metric)).toContain(
    '20 July 2028',
  );
  expect(keepHeadline(keepYearWith({ lots: [] }), today, metric)).toMatch(/^No onion/);
});

test('the answer tells of most years first where the store is bare in them too', () => {
  const [gap] = keepYearWith({}).gaps;
  const said = (from: number, to: number) => {
    const mostly = { from: dayNumber(2028, 6, from), to: dayNumber(2028, 6, to) };
    return plain(keepHeadline(keepYearWith({ gaps: [{ ...gap, mostly }] }), today, metric));
  };
  expect(said(12, 20)).toMatch(
    /, and in most years the store is bare 12–20 June, in a poor one 1–30 June\.$/,
  );
  expect(said(2, 29)).toMatch(/, and in most years the store is bare 2–29 June\.$/);
});

test.each([
  [
    sets,
    /^Plant 2 m² of northern long-day onions from sets about 25 March: 80 plants from 80 sets \(Sturon\); ready about 20 August, the last of them go about 10 March 2028\.$/,
  ],
  [trays, /in trays about 25 February .* 100 plants from 200 seeds/],
  [sown, /^Sow 1\.5 m².*120 seeds.*; ready about 20 September\.$/],
  [bought, /70 plants, 2 bundles \(Ailsa Craig\); in most years none come to keep\.$/],
])('a lot in one sentence', (lot, told) => {
  expect(plain(keepLotSentence(lot, today, null, metric))).toMatch(told);
});

test('a lot that is pulled green says so, and is no matter of what to eat first', () => {
  const green = { ...sets, likes: ['green'] as const };
  expect(plain(keepLotSentence(green, today, null, metric))).toMatch(
    /; pull them green from about 20 August to 10 March 2028\.$/,
  );
  expect(keepEatFirst(keepYearWith({ lots: [green] }), today, metric)).toHaveLength(1);
});

test('a gap with what closes it', () => {
  const [gap] = keepYearWith({}).gaps;
  const said = (closedBy: typeof gap.closedBy) => plain(keepGapSentence({ ...gap, closedBy }, metric));
  expect(said(['overwintered', 'green-onions', 'bought'])).toBe(
    '1–30 June: the store may be bare. Onions that stood through the winter, green onions or onions from a shop can close the gap.',
  );
  expect(said(['shallots'])).toBe('1–30 June: the store may be bare. Shallots can close the gap.');
  expect(said([])).toContain('nothing grown here');
});

test('wants that nothing answers are told, others not', () => {
  expect(keepUnmetSentence(keepYearWith({}), metric)).toBeNull();
  expect(keepUnmetSentence(keepYearWith({ unmetLikes: ['red', 'mild'] }), metric)).toContain(
    'red onions or mild onions',
  );
});

test('what to eat first: lots in their order, then flowered and unripe bulbs', () => {
  const said = keepEatFirst(keepYearWith({ lots: [trays, sets, sown] }), today, metric);
  expect(said[0]).toMatch(
    /: lot 2 \(northern long-day onions from sets, until about 10 March 2028\) and lot 1 \(.* in trays, until/,
  );
  expect(said.join(' ')).toContain('14% run to flower');
  expect(said.join(' ')).toContain('lifted unripe in 2 years in 10');
  expect(keepEatFirst(keepYearWith({ lots: [] }), today, metric)).toEqual([]);
});

test('what is in store: what loses most comes first', () => {
  const stored = {
    plantingId: 'a',
    liftedOn: dayNumber(2026, 8, 20),
    soundKg: { p10: 5, p50: 6, p90: 7 },
    soundBulbs: null,
    soundShare: { p10: 0.7, p50: 0.8, p90: 0.9 },
    lastsUntil: { share: 1, days: { p10: today, p50: today + 40, p90: today + 60 } },
    lostNextShare: 0.1,
    thickNeckShare: 0.04,
    nextLook: null,
    checks: 2,
  } satisfies StoredNow;
  const stores = [
    { name: 'Bram’s sets', stored },
    {
      name: 'Ines’s trays',
      stored: { ...stored, plantingId: 'b', lostNextShare: 0.3 },
    },
  ];
  const said = storedEatFirst(stores, today, metric);
  expect(said.map((sentence) => sentence.split(':')[0])).toEqual(['Ines’s trays', 'Bram’s sets']);
  expect(said[0]).toContain('30%');
  expect(said.join()).not.toContain('thick');
  const thick = { ...stores[0], stored: { ...stored, thickNeckShare: 0.22 } };
  expect(storedEatFirst([stores[1], thick], today, metric)[0]).toMatch(
    /^Bram’s sets: 22% had thick necks, so eat/,
  );
  expect(plain(storedSentence(stores[0], today, metric))).toBe(
    'Bram’s sets, lifted 20 August: 6 kg sound, 80% of what was lifted; over about 13 March.',
  );
  const ahead = { ...stores[0], stored: { ...stored, nextLook: today + 10 } };
  expect(plain(storedSentence(ahead, today, metric))).toMatch(
    / March\. Look through them about 11 February\.$/,
  );
  const uncounted = { name: 'Tin', stored: { ...stored, soundKg: null } };
  expect(storedSentence(uncounted, today, metric)).toContain('August: 80% of');
});

test('what to get: seed and sets by number and weight, bundles, trays, compost, labels', () => {
  const items = shoppingOf(keepYearWith({ lots: [sets, trays, bought] }));
  expect(items.map(({ what }) => what)).toEqual(['sets', 'seeds', 'bundles', 'trays', 'labels']);
  const said = items.map((item) => plain(shoppingSentence(item, 'GB', metric)));
  expect(said[1]).toMatch(/^Lot 2: 200 seeds of .*\(Red Baron\): about 0\.6–0\.8 g of seed\.$/);
  expect(said[2]).toMatch(/^Lot 3: 2 bundles .* for 70 plants\.$/);
  expect(said[3]).toBe('Trays with 100 cells in all, and 4 l of seed compost.');
  const american = items.map((item) => plain(shoppingSentence(item, 'US', us))).join(' ');
  expect(american).toMatch(/oz/);
  expect(american).toContain('seed-starting mix');
  // what is pulled green is never stored, and needs no label
  const [, , { what, count }] = shoppingOf(keepYearWith({ lots: [sets, { ...sets, likes: ['green'] }] }));
  expect([what, count]).toEqual(['labels', 1]);
  expect(shoppingOf(keepYearWith({ lots: [] }))).toEqual([]);
});

test('how we know: use, store and years, said or usual', () => {
  const store = { tempC: new Float64Array(365).fill(8), humidityPct: new Float64Array(365).fill(70) };
  store.tempC[0] = 4;
  const usual = { gramsPerPerson: 200, source: { from: 'memory' } } as const;
  const [use, air, years] = keepGrounds({ year: keepYearWith({}), store }, usual, [], metric).map(plain);
  expect(use).toContain('200 g a person and week is usual, 0.9 kg for 4 people (source: general knowledge');
  expect(air).toContain('(cellar) has 4–8°C and 70% humidity');
  expect(years).toContain('9 years in 10');
  const [given] = keepGrounds({ year: keepYearWith({}), store }, null, [], us);
  expect(given).toMatch(/eats 2 lb a week, for 4 people, as you said\.$/);
});

test('a source keeps its name in Spanish, and all around it is Spanish', () => {
  const spanish = speaker('metric', 'es');
  const named = 'New Mexico State University, onion.nmsu.edu/consumption.html';
  for (const country of [null, 'AL', 'GB', 'US', 'NZ', 'BD', 'IN']) {
    const { source } = usualGramsPerWeek(country);
    const said = useSource(source, spanish);
    const title = 'title' in source ? source.title : '';
    expect(said).toContain(title);
    if ('year' in source && source.year !== null) expect(said).toContain(`${source.year}`);
    expect(said.replace(title, '')).not.toMatch(/\b(the|of|as|for|report|knowledge|figures)\b/);
  }
  expect(useSource(usualGramsPerWeek(null).source, metric)).toBe(named);
  expect(useSource(usualGramsPerWeek('GB').source, metric)).toBe(
    'figures of the United Nations for 2011, as reported by freshplaza, 133716',
  );
});

test('every sentence is there in Spanish', () => {
  const spanish = speaker('metric', 'es');
  const year = keepYearWith({ lots: [sets, trays, sown, bought] });
  const store = { tempC: new Float64Array(365), humidityPct: new Float64Array(365) };
  const said = [
    keepHeadline(year, today, spanish),
    ...year.lots.map((lot) => keepLotSentence(lot, today, 'ES', spanish)),
    ...year.gaps.map((gap) => keepGapSentence(gap, spanish)),
    ...keepEatFirst(year, today, spanish),
    ...shoppingOf(year).map((item) => shoppingSentence(item, 'ES', spanish)),
    ...keepGrounds({ year, store }, null, [], spanish),
    ...keepCautions(spanish),
  ];
  for (const sentence of said) expect(sentence).not.toMatch(/\b(the|of|about|seeds|plants)\b/);
});
