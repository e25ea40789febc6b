import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import {
  type Choice,
  chooseKinds,
  classOfType,
  type Site,
  tryStarts,
  type WhenAnswer,
  waysOf,
} from '../../packages/engine/src/index.ts';
import { type CalendarRow, readCalendarRows } from '../../tools/score/calendar-rows.ts';
import { advisedRows, bestDateMiss, missOfSeason, nearDays, placesOf } from '../../tools/score/leads.ts';
import { exceptions } from './exceptions.ts';
import { commonKinds, newYear, siteOf } from './published.ts';

const shared = process.env.NECKFALL_SHARED;
describe.skipIf(shared === undefined)('at 24 places with published calendars, north to south', () => {
  const all = shared === undefined ? [] : placesOf(readCalendarRows(`${shared}/data/calendars.json`));
  const places = Array.from({ length: 24 }, (_, at) => all[Math.round((at * (all.length - 1)) / 23)]);

  test('a first-ranked kind is of a class that growers there use, but for the exceptions listed', () => {
    const strange: string[] = [];
    for (const place of places) {
      const choices = chooseKinds(siteOf(place), commonKinds, newYear) ?? [];
      const used = new Set(place.rows.map((row) => row.class));
      const first = choices.filter(({ rank }) => rank === 1);
      if (!first.some(({ kind }) => used.has(classOfType[kind.type]))) {
        const [{ kind }] = first;
        strange.push(
          `${place.latitudeDeg} ${place.name}: ${kind.type} ${kind.start}, not ${[...used].join(', ')}`,
        );
      }
    }
    const unlisted = strange.filter((line) => !Object.keys(exceptions).some((name) => line.includes(name)));
    expect(unlisted).toEqual([]);
  }, 180_000);
});

const fullRows = advisedRows(
  readCalendarRows(fileURLToPath(new URL('../../tools/score/fixtures/calendars.json', import.meta.url))),
);

/** Where nearly any week of the year will do, no date is the best: three quarters of them. */
const mostWeeks = 39;

const tried = new Map<CalendarRow, { site: Site; year: WhenAnswer }>();

/** What comes of a row's class and start in each week of the year; more than one test asks. */
function triedOf(row: CalendarRow): { site: Site; year: WhenAnswer } {
  const known = tried.get(row);
  if (known) return known;
  const site = siteOf(row);
  const ways = waysOf(site, { class: row.class }, [row.start]);
  const answer = { site, year: tryStarts(site, ways, {}, newYear) };
  tried.set(row, answer);
  return answer;
}

/** Weeks of the year in which a start as published is in time. */
function openWeeks(row: CalendarRow): number {
  const { windows } = triedOf(row).year;
  return windows.reduce((sum, { from, to }) => sum + (((to - from) / 7 + 52) % 52) + 1, 0);
}

describe('for calendar rows read in full', () => {
  test('the published start lies near a week that ends well', () => {
    const far = fullRows.filter((row) => {
      const good = triedOf(row).year.starts.filter(({ summary }) => summary.outcome === 'good');
      return !good.some(({ summary }) => missOfSeason(row, summary) <= nearDays);
    });
    console.info(`published starts near no good week: ${far.map(({ id }) => id).join(', ')}`);
    expect(far.length / fullRows.length).toBeLessThan(0.15);
  });

  test('the best date of its class and start lies in its window or near it', () => {
    const misses = fullRows
      .filter((row) => openWeeks(row) <= mostWeeks)
      .map((row) => ({ id: row.id, days: bestDateMiss(row, fullRows, triedOf(row).site) }));
    const far = misses.filter(({ days }) => days > nearDays);
    console.info(
      `best dates beyond 14 days of a published window: ${far.length} of ${misses.length}: ${far
        .map(({ id, days }) => `${id} ${days}`)
        .join(', ')}`,
    );
    expect(far.length / misses.length).toBeLessThanOrEqual(0.15);
  });
});

test('nothing long-day leads nearer to the equator than 28°', () => {
  // Common practice, no source: in the tropics only short-day onions make bulbs.
  const low = [
    [25.9, -97.5],
    [21.3, -157.9],
    [15.6, 32.5],
    [14.6, 121],
    [-1.29, 36.82],
    [-0.2, -78.5],
    [-17.8, 31],
    [-23.5, -46.6],
  ] as const;
  for (const [latitudeDeg, longitudeDeg] of low) {
    const site = siteOf({ latitudeDeg, longitudeDeg, elevationM: null });
    const [lead] = chooseKinds(site, commonKinds, newYear) as Choice[];
    expect({ latitudeDeg, class: classOfType[lead.kind.type] }).not.toEqual({ latitudeDeg, class: 'long' });
  }
}, 120_000);

// Common practice, no source: winters are mild there, days in summer long; keepers are what gardeners grow.
test.each([
  ['London', 51.51, -0.13],
  ['Dublin', 53.35, -6.26],
  ['Seattle', 47.61, -122.33],
])('short-day onions do not lead at %s', (_, latitudeDeg, longitudeDeg) => {
  const site = siteOf({ latitudeDeg, longitudeDeg, elevationM: 30 });
  const choices = chooseKinds(site, commonKinds, newYear) as Choice[];
  const first = choices.filter(({ rank }) => rank === 1).map(({ kind }) => classOfType[kind.type]);
  expect(first).not.toContain('short');
});

test('sets never lead where their type cannot bulb', () => {
  for (const [latitudeDeg, longitudeDeg] of [
    [-1.29, 36.82],
    [51.51, -0.13],
    [69.65, 18.96],
    [68.4, 17.4],
  ]) {
    const site = siteOf({ latitudeDeg, longitudeDeg, elevationM: 30 });
    const choices = chooseKinds(site, commonKinds, newYear) as Choice[];
    const firstUnripe = choices.findIndex(({ summary }) => summary.neckFall.share < 0.5);
    const lastRipe = choices.findLastIndex(({ summary }) => summary.neckFall.share >= 0.5);
    if (firstUnripe >= 0 && lastRipe >= 0) expect(lastRipe).toBeLessThan(firstUnripe);
  }
}, 60_000);
