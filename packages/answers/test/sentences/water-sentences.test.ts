import { loadLater, speaker } from '@neckfall/words';
import { expect, test } from 'vitest';
import type { Plan, SeasonSummary, WaterAnswer } from '../../../engine/src/index.ts';
import { dayNumber } from '../../../engine/src/index.ts';
import { saltSentence, waterAssumptions, waterRows, waterSentences } from '../../src/index.ts';

await loadLater();
const metric = speaker('metric');
const us = speaker('us');
const june = (day: number) => dayNumber(2027, 6, day);
const days = (from: number) => ({
  share: 1,
  days: { p10: june(from), p50: june(from + 1), p90: june(from + 4) },
});
const spread = (p50: number) => ({ p10: p50 / 2, p50, p90: 2 * p50 });
const nothing = { share: 0, days: null };

const thirsty: WaterAnswer = {
  today: {
    depletionMm: 18,
    readilyAvailableMm: 15,
    waterNow: true,
    litresPerM2: 24,
    litresForBed: 48,
    minutes: 4.8,
  },
  next: days(14),
  following: days(20),
  stop: { share: 1, days: { p10: june(28), p50: june(29), p90: june(30) } },
  seasonMm: { need: spread(300), rain: spread(200), given: spread(300) },
  watering: 'hose',
  efficiency: 0.75,
  salt: null,
  assumed: [],
  days: [],
};

/** What is said of a crop sown in March on 15 June. */
function said(water: Partial<WaterAnswer>, plan: Partial<Plan> = {}, liftedOn: number | null = null) {
  const startDay = dayNumber(2027, 3, 20);
  const summary = { plantOut: null, years: 30 } as unknown as SeasonSummary;
  const crop = { plan: { startDay, water: 'watered', ...plan } as Plan, summary, today: june(15), liftedOn };
  const sentences = waterSentences({ ...thirsty, ...water }, crop, metric);
  // the locale sets dates of a range apart by spaces of its own
  return sentences.map((sentence) => sentence.replace(/\s*–\s*/g, '–'));
}

const calm = { ...thirsty.today!, depletionMm: 6, waterNow: false };

test('a thirsty bed: how much, why, how long it lasts and until when', () => {
  expect(said({})).toEqual([
    'Water today: 24 l/m², 48 l for the whole bed, about 5 minutes of the hose.',
    'The bed is short of 18 mm of water, and onions feel it from 15 mm on.',
    'That lasts until about 21 June (20–24 June).',
    'Stop when the first tops begin to fall, about 29 June (28–30 June): bulbs ripen in dry ground.',
  ]);
  const bare = { ...thirsty.today!, litresForBed: null, minutes: null };
  expect(said({ today: bare })[0]).toBe('Water today: 24 l/m².');
  expect(said({ following: nothing })[2]).toBe('Rain does for the rest.');
  expect(said({ watering: 'drip', today: { ...thirsty.today!, minutes: 0.2 } })[0]).toContain(
    'about one minute of the line',
  );
});

test('a moist bed: what it is short of and when it is due', () => {
  expect(said({ today: calm }).slice(0, 2)).toEqual([
    'No need to water today: the bed is short of 6 mm of water, and onions feel it from 15 mm on.',
    'Water next about 15 June (14–18 June).',
  ]);
  expect(said({ today: { ...calm, depletionMm: 0.2 } })[0]).toContain('all it can hold');
  expect(said({ today: calm, next: { ...days(20), share: 0.5 } })[1]).toBe(
    'Rain may do: the bed asks for water again in 5 years in 10, about 21 June (20–24 June).',
  );
  expect(said({ today: calm, next: nothing })[1]).toBe('Rain does for the rest.');
});

test('a crop that is not watered: to come, ripening, out of the ground, or none at all', () => {
  const ahead = said({ today: null }, { startDay: june(20) });
  expect(ahead[0]).toBe('Nothing to water yet: these go into their bed about 20 June.');
  expect(ahead[1]).toContain('The first watering is due about 15 June');
  expect(said({ today: null })).toEqual([
    'Water no more: about now the first tops begin to fall, and bulbs ripen in dry ground.',
  ]);
  expect(said({}, {}, june(10))).toEqual(['Water no more: these came out of the ground on 10 June.']);
  expect(said({ today: null, seasonMm: null })[0]).toContain('nothing to water');
});

test('a crop on rain alone: the same, told as what it would take', () => {
  expect(said({}, { water: 'rain' }).at(-1)).toBe(
    'These grow on rain alone; this is what watering them would take.',
  );
});

test('a season: dry years need more and have less rain; the bed where its size is known', () => {
  const rows = (water: WaterAnswer, areaM2: number | null) =>
    waterRows(water, areaM2, metric).map(({ title, ordinary, dry }) => [title, ordinary, dry]);
  expect(rows(thirsty, 2)).toEqual([
    ['To give in all', '300 l/m²', '600 l/m²'],
    ['For the whole bed', '600 l', '1,200 l'],
    ['Rain meanwhile', '200 mm', '100 mm'],
  ]);
  const underWay = { ...thirsty, seasonMm: { ...thirsty.seasonMm!, given: spread(200) } };
  expect(rows(underWay, null)[1][1]).toBe('200 l/m²');
  expect(waterRows({ ...thirsty, seasonMm: null }, 2, metric)).toEqual([]);
  expect(waterRows(thirsty, 2, us)[1].ordinary).toBe('159 gal');
});

test('salt and what was assumed', () => {
  expect(saltSentence(thirsty, metric)).toBeNull();
  const salty = (yieldShare: number, leachingShare: number) =>
    saltSentence({ ...thirsty, salt: { yieldShare, leachingShare } }, metric);
  expect(salty(0.8, 0.2)).toBe(
    'Salt in this water leaves about 80 % of the crop. The amounts are 25 % larger, to wash it down.',
  );
  expect(salty(1, 0)).toBe('Onions bear the salt in this water.');
  expect(salty(1, 0.1)).toContain('11 % larger');
  const assumed = waterAssumptions({ ...thirsty, assumed: ['watered-when-due'] }, metric).join(' ');
  expect(assumed).toContain('until 3 days ago');
  expect(assumed).toContain('from the hose, 75 % reaches the roots');
});
