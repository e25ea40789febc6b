import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dayNumber,
  onionTypes,
  openSite,
  type Plan,
  type PlanForm,
  type Pull,
  planDefaults,
  plantValuesOf,
  runnerOf,
  type Site,
  stage,
  startMethods,
  strongerOf,
  warmed,
  whatMovesIt,
} from '../../packages/engine/src/index.ts';
import { climateOf, uniformClimate } from '../season/places.ts';

const open = (climate: Site['climate']) => openSite({ climate, years: 1, seed: 1 });
const london = open(climateOf(51.51, -0.13, 20));
const winnipeg = open(climateOf(49.9, -97.14, 235));
const seville = open(climateOf(37.38, -5.98, 10));
const auckland = open(climateOf(-36.85, 174.76, 20));
const sites = [london, winnipeg, seville, auckland];

const springSown: PlanForm = {
  ...planDefaults,
  type: 'northern-long',
  start: 'direct-seed',
  startDay: dayNumber(2027, 3, 20),
};
const pullOf = (pulls: Pull[] | null, cause: Pull['cause']) =>
  pulls?.find((pull) => pull.cause === cause) as Pull;
const fallsOn = (site: Site, plan: Plan) => {
  const outcome = runnerOf(site, plan).meanSeason();
  return outcome.reached === stage.fallen ? plan.startDay + outcome.fellOn : null;
};

describe('what moves the tops of a spring-sown crop in London', () => {
  const pulls = whatMovesIt(london, springSown);

  // Ripening follows warmth: Steer 1980; a later start moves onset by half its days and tops by a quarter: Oshima 1950–52.
  test('is told of warmth, day length and start, each either way', () => {
    expect(pulls?.map(({ cause }) => cause).toSorted()).toEqual(['day-length', 'start', 'warmth']);
    const warmth = pullOf(pulls, 'warmth');
    expect(warmth.more.neckFallDays).toBeLessThan(0);
    expect(warmth.less.neckFallDays ?? 1).toBeGreaterThan(0);
    expect(pullOf(pulls, 'day-length').more.neckFallDays).toBeGreaterThanOrEqual(0);
    const { more } = pullOf(pulls, 'start');
    expect(more.neckFallDays).toBeGreaterThan(0);
    expect(more.neckFallDays).toBeLessThan(10);
  });
});

test('each figure is that of the crop run by itself', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...sites),
      fc.constantFrom(...onionTypes),
      fc.constantFrom(...startMethods),
      fc.integer({ min: 0, max: 364 }),
      (site, type, start, day) => {
        // trays at a stated warmth: else they may stand indoors in one run and outdoors in the other
        const plan: PlanForm = {
          ...springSown,
          type,
          start,
          startDay: dayNumber(2027, 1, 1) + day,
          nurseryTempC: 15,
        };
        const usual = fallsOn(site, plan);
        const pulls = whatMovesIt(site, plan);
        expect(pulls === null).toBe(usual === null);
        if (pulls === null || usual === null) return;
        const { criticalPhotoperiodH } = plantValuesOf(site.values, plan);
        const byHand = {
          warmth: (by: number) => fallsOn(open(warmed(site.climate, by)), plan),
          'day-length': (by: number) =>
            fallsOn(site, {
              ...plan,
              traits: {
                criticalPhotoperiodH: criticalPhotoperiodH + by,
                ripeningFactor: null,
                boltingFactor: null,
                dryMatterShare: null,
              },
            }),
          start: (by: number) => fallsOn(site, { ...plan, startDay: plan.startDay + by }),
        };
        for (const { cause, less, more } of pulls) {
          for (const { by, neckFallDays } of [less, more]) {
            const then = byHand[cause](by);
            expect(neckFallDays).toBe(then === null ? null : then - usual);
          }
        }
        const days = pulls.map((pull) => {
          const { neckFallDays, failure } = strongerOf(pull);
          return failure !== null || neckFallDays === null
            ? Number.POSITIVE_INFINITY
            : Math.abs(neckFallDays);
        });
        expect(days).toEqual(days.toSorted((a, b) => b - a));
      },
    ),
    { seed: 20270503, numRuns: 60 },
  );
});

test('a crop that makes no bulbs hangs on nothing', () => {
  // northern long-day onions at the equator: no onset below 20° of latitude
  const equator = open(uniformClimate(24, 8, 0));
  expect(whatMovesIt(equator, springSown)).toBeNull();
});

test('trays stay indoors when a degree would move them out', () => {
  // seedlings sown where the air is at 10 °C and warmer stand in a seedbed outdoors
  const day = london.mean('none').tempMeanC.findIndex((meanC) => meanC > 9.3);
  const plan: PlanForm = { ...springSown, start: 'raised-seedlings', startDay: dayNumber(2027, 1, 1) + day };
  const { nurseryTempC } = runnerOf(london, plan);
  expect(nurseryTempC).not.toBeNull();
  const warmer = open(warmed(london.climate, 1));
  expect(runnerOf(warmer, plan).nurseryTempC).toBeNull();
  const pulls = whatMovesIt(london, plan);
  expect(pulls).not.toBeNull();
  expect(pulls?.find(({ cause }) => cause === 'warmth')).toEqual(
    whatMovesIt(london, { ...plan, nurseryTempC })?.find(({ cause }) => cause === 'warmth'),
  );
});
