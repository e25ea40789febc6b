import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { onionTypes, startMethods } from '../../src/plant/index.ts';
import { endSeason } from '../../src/season/end-season.ts';
import { growDay } from '../../src/season/grow-day.ts';
import {
  type DayTrace,
  dayTrace,
  openSite,
  type Plan,
  type PlanForm,
  planDefaults,
  runnerOf,
  type Site,
} from '../../src/season/index.ts';
import { emptySeedling, raise } from '../../src/season/nursery.ts';
import { emptyOutcome, type Outcome } from '../../src/season/outcome.ts';
import { plantSeen } from '../../src/season/plant-seen.ts';
import { calendarYear, driverIndex } from '../../src/season/site.ts';
import { termsOf } from '../../src/season/terms.ts';
import { climateOf, wetWinterCoast } from '../weather/climates.ts';

const sites = [
  openSite({ climate: wetWinterCoast, years: 6, seed: 1 }),
  openSite({
    climate: climateOf({ latitudeDeg: 60, mean: [-6, -6, -2, 4, 10, 15, 17, 16, 11, 6, 1, -3] }),
    years: 6,
    seed: 2,
  }),
  openSite({ climate: climateOf({ latitudeDeg: -20, mean: Array(12).fill(24) }), years: 6, seed: 3 }),
];

const plans = fc.record({
  site: fc.constantFrom(...sites),
  year: fc.integer({ min: 0, max: 5 }),
  plan: fc.record({
    type: fc.constantFrom(...onionTypes),
    start: fc.constantFrom(...startMethods),
    cover: fc.constantFrom('none', 'fleece', 'tunnel'),
    water: fc.constantFrom('watered', 'rain'),
    sunHours: fc.constantFrom(null, 5),
    densityPerM2: fc.constantFrom(15, 40, 160),
    startDay: fc.integer({ min: dayNumber(2027, 1, 1), max: dayNumber(2027, 12, 31) }),
  }),
});
const grown = (plan: Partial<PlanForm>): Plan => ({ ...planDefaults, plantOutDay: null, ...plan }) as Plan;

/** A season by its named steps, held on each day to what the flat loop has traced. */
function bySteps(site: Site, plan: Plan, year: number, trace: DayTrace): Outcome {
  const runner = runnerOf(site, plan);
  const { crop, table } = runner;
  const startYear = calendarYear(plan.startDay);
  const open = site.generated('none', startYear);
  const covered = site.generated(plan.cover, startYear);
  const at = driverIndex(site, plan.startDay, year);
  const photoAt = plan.startDay - table.firstDay;
  const seedling = emptySeedling();
  crop.draw = site.draws()[year];
  raise(plan, crop, open, covered, at, table.photoperiodH, photoAt, runner.nurseryTempC, null, seedling);
  const { plant, day: beddedOn } = seedling;
  // what comes before the bed is told alike by both
  const out = { ...emptyOutcome(), ...runner.season(year), onsetOn: 0, leavesMade: 0, leavesGreen: 0 };
  if (!seedling.emerged || beddedOn >= crop.lastDay) return out;
  const terms = termsOf(crop, open, covered, at, table.photoperiodH, photoAt, beddedOn);
  let day = beddedOn;
  for (; day < crop.lastDay; day++) {
    const goesOn = growDay(plant, terms, day, out);
    if (goesOn || plant.ripening >= 1)
      expect([trace.leavesGreen[day], trace.shootG[day], trace.ripening[day]]).toEqual([
        plant.green,
        plant.shootG,
        plant.ripening,
      ]);
    if (!goesOn) break;
  }
  endSeason(plant, terms, day, out);
  return out;
}

describe('the flat loop', () => {
  test('comes to what the named steps come to, bit for bit', () => {
    fc.assert(
      fc.property(plans, ({ site, year, plan }) => {
        const runner = runnerOf(site, grown(plan));
        const trace = dayTrace(900);
        const flat = { ...runner.season(year, trace) };
        expect(flat).toEqual(bySteps(site, grown(plan), year, trace));
      }),
      { seed: 18, numRuns: 400 },
    );
  });
});

describe('a season can go on from a plant', () => {
  test('as it stood on any morning: the end is the same', () => {
    fc.assert(
      fc.property(plans, fc.integer({ min: 0, max: 260 }), ({ site, year, plan }, day) => {
        const runner = runnerOf(site, grown(plan));
        const whole = { ...runner.season(year) };
        const plant = runner.plantOn(year, day);
        fc.pre(plant !== null && !plant.hasBulb);
        expect({ ...runner.seasonFrom(year, plant!, day) }).toEqual(whole);
      }),
      { seed: 18, numRuns: 200 },
    );
  });

  test('as it was seen: more leaves make a larger bulb, as many as thought change nothing', () => {
    const runner = runnerOf(
      sites[0],
      grown({ type: 'northern-long', start: 'sets', startDay: dayNumber(2027, 3, 20) }),
    );
    const day = 60;
    const plant = runner.plantOn(2, day)!;
    const whole = runner.season(2).bulbDryG;
    const seen = (leaves: number) =>
      runner.seasonFrom(2, plantSeen(runner.crop, plant, leaves), day).bulbDryG;
    expect(seen(plant.green)).toBe(whole);
    expect(seen(plant.green + 2)).toBeGreaterThan(whole);
    expect(seen(plant.green - 1.5)).toBeLessThan(whole);
  });
});
