import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type DateSpread,
  type DayTrace,
  dayNumber,
  dayTrace,
  type Outcome,
  openSite,
  type Plan,
  planDefaults,
  runnerOf,
  runPlan,
  type SeasonSummary,
  type Spread,
  stage,
  warmed,
} from '../../packages/engine/src/index.ts';
import { days, plans, points } from './any-plan.ts';
import { climateOf, uniformClimate } from './places.ts';

const years = 3;
const runs = { numRuns: 150, seed: 20270503 };
/** Longer than any season. */
const traceDays = 800;

const seeds = fc.integer({ min: 0, max: 2 ** 31 - 1 });

describe('anywhere on land, on any day, however started', () => {
  test('stages come in order and nothing is negative, shrinks where it cannot or is no number', () => {
    fc.assert(
      fc.property(points, plans, seeds, ([lat, lon], plan, seed) => {
        const site = openSite({ climate: climateOf(lat, lon), years, seed });
        const runner = runnerOf(site, plan);
        checkSeason((trace) => runner.meanSeason(trace), plan);
        for (let year = 0; year < years; year++) checkSeason((trace) => runner.season(year, trace), plan);
      }),
      runs,
    );
  });

  test('a summary holds only numbers, its shares sum to 1 and its percentiles stand in order', () => {
    fc.assert(
      fc.property(points, plans, seeds, ([lat, lon], plan, seed) => {
        const summary = runPlan(openSite({ climate: climateOf(lat, lon), years, seed }), plan);
        expect(strangeNumbers(summary)).toEqual([]);
        const shares = Object.values(summary.seasonShares);
        expect(shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
        for (const share of [...shares, summary.emergedShare, summary.onset.share, summary.neckFall.share]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
        checkSpreads(summary);
      }),
      runs,
    );
  });

  test('the same seed gives the same answer, whichever season is asked for first', () => {
    fc.assert(
      fc.property(points, plans, seeds, ([lat, lon], plan, seed) => {
        const climate = climateOf(lat, lon);
        const answer = () => openSite({ climate, years, seed });
        expect(runPlan(answer(), plan)).toEqual(runPlan(answer(), plan));
        const runner = runnerOf(answer(), plan);
        const first = { ...runner.season(0) };
        runner.season(years - 1);
        runner.meanSeason();
        expect(runner.season(0)).toEqual(first);
      }),
      { ...runs, numRuns: 60 },
    );
  });

  test('another seed gives other seasons where weather varies at all', () => {
    const plan: Plan = {
      ...planDefaults,
      type: 'early-long',
      start: 'direct-seed',
      startDay: dayNumber(2027, 4, 1),
    };
    const of = (seed: number) => runPlan(openSite({ climate: climateOf(45.76, 4.84), years, seed }), plan);
    expect(of(1).bulbMassG).not.toEqual(of(2).bulbMassG);
  });
});

describe('warmer soil up to 25 °C is never later to bring seed up', () => {
  const sown = (climate: Parameters<typeof openSite>[0]['climate'], startDay: number) =>
    runnerOf(openSite({ climate, years: 1, seed: 1 }), {
      ...planDefaults,
      type: 'intermediate',
      start: 'direct-seed',
      startDay,
    });

  test('in steady warmth, with any swing between day and night', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 25, noNaN: true }),
        fc.double({ min: 0, max: 25, noNaN: true }),
        fc.double({ min: 1, max: 18, noNaN: true }),
        days,
        (a, b, rangeC, startDay) => {
          const coolOne = sown(uniformClimate(Math.min(a, b), rangeC), startDay).meanSeason();
          const cool = { ...coolOne };
          const warm = sown(uniformClimate(Math.max(a, b), rangeC), startDay).meanSeason();
          expectNoLater(warm, cool);
        },
      ),
      runs,
    );
  });

  test('and it does speed seed up: 20 °C well before 10 °C', () => {
    const startDay = dayNumber(2027, 3, 1);
    const at = (tempC: number) => sown(uniformClimate(tempC, 10), startDay).meanSeason().emergedOn;
    expect(at(20)).toBeLessThan(0.7 * at(10));
  });

  test('in any climate made warmer, in the mean season and in a generated one', () => {
    fc.assert(
      fc.property(points, fc.double({ min: 0, max: 4, noNaN: true }), days, ([lat, lon], by, startDay) => {
        const climate = climateOf(lat, lon);
        const asItIs = sown(climate, startDay);
        const warmer = sown(warmed(climate, by), startDay);
        const cool = { ...asItIs.meanSeason() };
        expectNoLater(warmer.meanSeason(), cool);
        const coolYear = { ...asItIs.season(0) };
        expectNoLater(warmer.season(0), coolYear);
      }),
      { ...runs, numRuns: 60 },
    );
  });
});

function expectNoLater(warm: Outcome, cool: Outcome): void {
  if (cool.reached === stage.started) return;
  expect(warm.reached).toBeGreaterThan(stage.started);
  expect(warm.emergedOn).toBeLessThanOrEqual(cool.emergedOn);
}

const nonNegative = [
  'shootG',
  'bulbDryG',
  'boltedShare',
  'aliveShare',
  'emergedShare',
  'thirstyDays',
] as const;

function checkSeason(run: (trace: DayTrace) => Outcome, plan: Plan): void {
  const trace = dayTrace(traceDays);
  const o = run(trace);
  expect(strangeNumbers(o)).toEqual([]);
  for (const name of nonNegative) expect(o[name], name).toBeGreaterThanOrEqual(0);
  for (const share of [o.boltedShare, o.aliveShare, o.emergedShare]) expect(share).toBeLessThanOrEqual(1);
  if (o.reached >= stage.planted) {
    expect(o.emergedOn).toBeGreaterThanOrEqual(0);
    expect(o.plantedOn).toBeGreaterThanOrEqual(o.emergedOn);
    if (plan.start === 'raised-seedlings' && plan.plantOutDay !== null)
      expect(plan.startDay + o.plantedOn).toBe(plan.plantOutDay);
  }
  if (o.reached >= stage.onset) expect(o.onsetOn).toBeGreaterThanOrEqual(o.plantedOn);
  if (o.reached >= stage.fallen) expect(o.fellOn).toBeGreaterThan(o.onsetOn);
  if (o.reached < stage.onset) expect(o.bulbDryG).toBe(0);
  checkTrace(trace, o.plantedOn);
}

const columns = ['leavesMade', 'leavesGreen', 'shootG', 'bulbG', 'bulbing', 'ripening'] as const;
const growing = ['leavesMade', 'shootG', 'bulbG', 'ripening'] as const;

function checkTrace(trace: DayTrace, first: number): void {
  const faults: string[] = [];
  const must = (holds: boolean, what: string, day: number) => {
    if (!holds) faults.push(`${what} on day ${day}`);
  };
  for (let day = first; day < trace.length; day++) {
    for (const name of columns) must(trace[name][day] >= 0, `${name} negative or no number`, day);
    must(trace.leavesGreen[day] <= trace.leavesMade[day], 'more green leaves than made', day);
    must(trace.bulbing[day] <= 1, 'bulbing past 1', day);
    if (day === first) continue;
    for (const name of growing) must(trace[name][day] >= trace[name][day - 1], `${name} shrinks`, day);
  }
  expect(faults).toEqual([]);
}

/** Paths of the values that are NaN, infinite or undefined. */
function strangeNumbers(value: unknown, path = ''): string[] {
  if (value === undefined) return [path];
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => strangeNumbers(inner, `${path}.${key}`));
}

function checkSpreads(summary: SeasonSummary): void {
  for (const [name, value] of Object.entries(summary)) {
    if (value === null || typeof value !== 'object') continue;
    const isDate = 'days' in value;
    if (isDate) expect(value.days === null, name).toBe((value as DateSpread).share === 0);
    const spread = (isDate ? value.days : value) as Spread | null;
    if (spread === null || !('p10' in spread)) continue;
    expect(spread.p10, name).toBeLessThanOrEqual(spread.p50);
    expect(spread.p50, name).toBeLessThanOrEqual(spread.p90);
    if (!isDate) expect(spread.p10, name).toBeGreaterThanOrEqual(0);
  }
}
