import { readClimateNodes } from '@neckfall/data/node';
import {
  bestOfSown,
  dayNumber,
  kindsSown,
  latitudeClimates,
  medianSeasonDays,
  type OnionType,
  onionTypes,
  openLatitude,
  runPlan,
  sameWinter,
  sowingYear,
  sownInPlace,
  sunOverYear,
} from '@neckfall/engine';
import { loadLater, speaker } from '@neckfall/words';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  type LatitudeTold,
  latitudeHeadline,
  latitudeSentences,
  placeYear,
  sameWinterSentences,
} from '../../src/index.ts';

const climates = latitudeClimates(readClimateNodes());
const metric = speaker('metric');

function toldOf(latitudeDeg: number, startDay: number, type: OnionType): LatitudeTold {
  const site = openLatitude(climates, latitudeDeg, 0);
  const kinds = kindsSown(site, startDay);
  const chosen = onionTypes.indexOf(type);
  return {
    latitudeDeg,
    startDay,
    sun: sunOverYear(site, startDay),
    year: placeYear(site.climate, sowingYear(startDay, latitudeDeg), 517),
    kinds,
    chosen,
    best: kinds.indexOf(bestOfSown(site, kinds)),
    days: medianSeasonDays(site, kinds[chosen].summary.plan),
    earlier: runPlan(site, sownInPlace(type, startDay - 21)),
  };
}

const said = (latitudeDeg: number, type: OnionType, startDay = dayNumber(2027, 3, 20)) =>
  latitudeSentences(toldOf(latitudeDeg, startDay, type), metric);

beforeAll(() => loadLater());

describe('the three sentences of a stop', () => {
  test('tell the day, the kind and what to do, in numbers of that stop', () => {
    const told = toldOf(52, dayNumber(2027, 4, 20), 'northern-long');
    const [days, kind, next] = latitudeSentences(told, metric);
    expect(days).toBe(
      'At 52° north the longest day is 16 h 44 min with the sun up and the shortest 7 h 44 min.',
    );
    expect(kind).toMatch(
      /^The bulbs of northern long-day onions start when the sun is up \d+ h.*, here from \d+ April to \d+ August; sown on 20 April, they have \d+ leaves when bulbs start on \d+ \w+/,
    );
    expect(next).toMatch(/^Sow three weeks earlier, on 30 March, and /);
    expect(latitudeHeadline(told, metric)).toMatch(/^At 52° north, sown in place on 20 April, /);
  });

  test('count the rings that were won by really sowing earlier', () => {
    const told = toldOf(30, dayNumber(2026, 11, 20), 'short');
    const rings = ({ leavesGreenAtOnset }: (typeof told)['earlier']) => Math.round(leavesGreenAtOnset!.p50);
    const won = rings(told.earlier) - rings(told.kinds[told.chosen].summary);
    expect(won).toBeGreaterThan(0);
    const words = won === 1 ? 'one more ring' : `${won} more rings`;
    expect(latitudeSentences(told, metric)[2]).toContain(words);
  });

  test('on the equator say that days are alike, and that long-day kinds never bulb', () => {
    const [days, kind, next] = said(0, 'northern-long');
    expect(days).toContain('about 12 h 07 min every day');
    expect(kind).toContain('no day here is that long');
    expect(kind).toContain('they grow leaves and no bulb');
    expect(next).toMatch(/short-day onions sown the same day come to|make no bulb either/);
  });

  test('beyond the polar circle count the days without night and without day', () => {
    expect(said(66, 'northern-long')[0]).toMatch(/does not set for \d+ days of summer, and the shortest day/);
    expect(said(70, 'northern-long')[0]).toMatch(/does not set for \d+ days .* does not rise for \d+ days/);
  });

  test('stand south of the equator with seasons turned', () => {
    const [days, kind] = said(-45, 'northern-long', dayNumber(2027, 9, 20));
    expect(days).toContain('At 45° south');
    expect(kind).toMatch(/here from \d+ (October|November) to \d+ February/);
  });

  test('are sentences for every stop, kind and month', () => {
    for (const latitudeDeg of [-60, -30, 0, 23, 37, 52, 67, 70])
      for (const month of [1, 4, 7, 10])
        for (const sentence of said(latitudeDeg, onionTypes[month % 5], dayNumber(2027, month, 10))) {
          expect(sentence).toMatch(/^[A-Z].*\.$/);
          expect(sentence).not.toMatch(/NaN|undefined|null|, \.| {2}|Infinity/);
        }
  });
});

test('one zone with opposite kinds is told from what was worked out', () => {
  const steps = sameWinter(climates, 1, sowingYear(dayNumber(2027, 3, 20), 1));
  let step = steps.next();
  while (!step.done) step = steps.next();
  if (!step.value) throw new Error('nothing found');
  const [same, near, far, words] = sameWinterSentences(step.value, metric);
  const [one, other] = step.value.opposite;
  expect(same).toContain(`${one.latitudeDeg}° north and ${other.latitudeDeg}° north`);
  expect(near).toMatch(/short-day onions sown on .* mm across/);
  expect(far).toMatch(/long-day onions sown on .* mm across/);
  expect(words).toContain('The zone tells of winter cold; the onion asks the day.');
});
