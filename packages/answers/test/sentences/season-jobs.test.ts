import { type DateSpread, type DayRow, type Plan, planDefaults, type SeasonSummary } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { seasonJobs, type WeekCode, weekOf } from '../../src/index.ts';

const startDay = 1000;
/** A stated season of seed, in days from the start: up on day 20, bulbs from day 100, tops over on day 150. */
const on = (day: number | null): DateSpread =>
  day === null
    ? { share: 0, days: null }
    : { share: 1, days: { p10: startDay + day - 5, p50: startDay + day, p90: startDay + day + 5 } };
const seasonOf = (of: { plantOut?: number; onset?: number | null; neckFall?: number | null } = {}) => {
  const { plantOut, onset = 100, neckFall = 150 } = of;
  const plan: Plan = {
    ...planDefaults,
    type: 'northern-long',
    start: plantOut === undefined ? 'direct-seed' : 'raised-seedlings',
    startDay,
  };
  return {
    plan,
    emergence: on(20),
    plantOut: plantOut === undefined ? null : on(plantOut),
    onset: on(onset),
    neckFall: on(neckFall),
  } as SeasonSummary;
};
const weekOn = (
  summary: SeasonSummary,
  day: number,
  more: { lostShare?: number; tempMeanC?: number } = {},
): WeekCode => weekOf(summary, { day: startDay + day, lostShare: 0, tempMeanC: 15, ...more });
/** A job and the days on which it begins and ends. */
const expectFrom = (summary: SeasonSummary, code: WeekCode, from: number, to: number) => {
  expect(weekOn(summary, from - 1)).not.toBe(code);
  expect(weekOn(summary, from)).toBe(code);
  expect(weekOn(summary, to)).toBe(code);
  expect(weekOn(summary, to + 1)).not.toBe(code);
};

// Days are common practice where no source is named.
describe('a job of the season', () => {
  const season = seasonOf();

  test('is to prepare for three weeks, and to start for three days either way', () => {
    expect(weekOn(season, -22)).toBe('far');
    expectFrom(season, 'prepare', -21, -4);
    expectFrom(season, 'start', -3, 3);
  });

  test('is to wait until the crop is up', () => {
    expectFrom(season, 'wait', 4, 19);
  });

  test('is the last feed in the four weeks before bulbs start (Utah State University Extension, second-hand)', () => {
    expectFrom(season, 'grow', 20, 71);
    expectFrom(season, 'feed', 72, 99);
  });

  test('is to water bulbs from their start to ten days before tops go over (memory: several extensions)', () => {
    expectFrom(season, 'bulb', 100, 139);
    expectFrom(season, 'dry', 140, 149);
  });

  test('is to lift in the fortnight from the day on which tops go over, then to dry for four weeks (Kansas extension)', () => {
    expectFrom(season, 'lift', 150, 163);
    expectFrom(season, 'cure', 164, 191);
    expect(weekOn(season, 192)).toBe('over');
  });

  test('is to harden seedlings off for ten days (Iowa State Extension) and to plant them', () => {
    const raised = seasonOf({ plantOut: 60 });
    expectFrom(raised, 'tray', 4, 49);
    expectFrom(raised, 'harden', 50, 62);
    expect(weekOn(raised, 63)).toBe('grow');
  });

  test('is none in the cold, until bulbs start', () => {
    expect(weekOn(season, 60, { tempMeanC: 4.9 })).toBe('winter');
    expect(weekOn(season, 60, { tempMeanC: 5 })).toBe('grow');
    expect(weekOn(season, 110, { tempMeanC: 4.9 })).toBe('bulb');
  });

  test('is a look at the bed where frost has taken most', () => {
    expect(weekOn(season, 60, { lostShare: 0.51 })).toBe('lost');
    expect(weekOn(season, 60, { lostShare: 0.5 })).toBe('grow');
  });

  test('is to pull bulbs whose tops never go over, and to use the rest green, up to 300 days', () => {
    expect(weekOn(seasonOf({ neckFall: null }), 110)).toBe('pull');
    const green = seasonOf({ onset: null, neckFall: null });
    expectFrom(green, 'green', 20, 300);
    expect(weekOn(green, 301)).toBe('over');
  });
});

describe('the jobs of a season in a row', () => {
  const rowsOf = (tempOn: (day: number) => number, to = 150): DayRow[] =>
    Array.from(
      { length: to - 19 },
      (_, i) => ({ day: startDay + 20 + i, tempMeanC: tempOn(20 + i) }) as DayRow,
    );
  const told = (summary: SeasonSummary, rows: DayRow[]) =>
    seasonJobs(summary, rows).map(({ code, from, to }) => [code, from - startDay, to - startDay]);

  test('follow each other to the day', () => {
    expect(
      told(
        seasonOf(),
        rowsOf(() => 15),
      ),
    ).toEqual([
      ['prepare', -20, -4],
      ['start', -3, 3],
      ['wait', 4, 19],
      ['grow', 20, 71],
      ['feed', 72, 99],
      ['bulb', 100, 139],
      ['dry', 140, 149],
      ['lift', 150, 163],
      ['cure', 164, 191],
    ]);
  });

  test('tell no spell of cold under three weeks', () => {
    const coldFor = (days: number) => rowsOf((day) => (day >= 150 && day < 150 + days ? -30 : 15), 300);
    const late = seasonOf({ onset: 280, neckFall: 330 });
    const winters = (days: number) => told(late, coldFor(days)).filter(([code]) => code === 'winter').length;
    // the mean of a fortnight is cold for some days more than a spell
    expect(winters(5)).toBe(0);
    expect(winters(25)).toBe(1);
  });

  test('end after 300 days where tops never go over', () => {
    const green = seasonOf({ onset: null, neckFall: null });
    expect(
      told(
        green,
        rowsOf(() => 15, 500),
      ).at(-1),
    ).toEqual(['green', 20, 300]);
    expect(
      told(
        green,
        rowsOf(() => 15, 200),
      ).at(-1),
    ).toEqual(['green', 20, 200]);
  });
});
