import { describe, expect, test } from 'vitest';
import {
  dayNumber,
  type MonthlyClimate,
  openSite,
  type Plan,
  planDefaults,
  runnerOf,
  stage,
} from '../../packages/engine/src/index.ts';
import { climateOf } from './places.ts';

/** One crop for each kind of season: spring and autumn starts, every type, seasons across New Year. */
const crops: {
  name: string;
  at: [number, number];
  plan: Pick<Plan, 'type' | 'start'>;
  on: [number, number];
}[] = [
  {
    name: 'Aberdeen, sets in March',
    at: [57.15, -2.11],
    plan: { type: 'northern-long', start: 'sets' },
    on: [3, 25],
  },
  {
    name: 'Warsaw, sown in April',
    at: [52.23, 21.01],
    plan: { type: 'northern-long', start: 'direct-seed' },
    on: [4, 5],
  },
  {
    name: 'Lyon, raised from February',
    at: [45.76, 4.84],
    plan: { type: 'early-long', start: 'raised-seedlings' },
    on: [2, 10],
  },
  {
    name: 'Sacramento, plants in January',
    at: [38.58, -121.49],
    plan: { type: 'intermediate', start: 'bought-transplants' },
    on: [1, 20],
  },
  {
    name: 'Houston, sown in October',
    at: [29.76, -95.37],
    plan: { type: 'short', start: 'direct-seed' },
    on: [10, 10],
  },
  {
    name: 'Nashik, raised from September',
    at: [20, 73.78],
    plan: { type: 'tropical-short', start: 'raised-seedlings' },
    on: [9, 20],
  },
];

/** The same climate on the other half of the Earth, six months on. */
function mirrored(climate: MonthlyClimate): MonthlyClimate {
  const halfYearOn = (months: Float64Array) => months.map((_, month) => months[(month + 6) % 12]);
  const { latitudeDeg, longitudeDeg, elevationM, ...fields } = climate;
  const shifted = Object.fromEntries(
    Object.entries(fields).map(([name, value]) => [
      name,
      value instanceof Float64Array ? halfYearOn(value) : value,
    ]),
  ) as Omit<MonthlyClimate, 'latitudeDeg' | 'longitudeDeg' | 'elevationM'>;
  return { latitudeDeg: -latitudeDeg, longitudeDeg, elevationM, ...shifted };
}

/** From one solstice to the next, days: half a year by the Sun. */
const halfYearDays = 183;

describe('south of the equator the season is the mirror of the same climate to the north', () => {
  test.each(crops)('$name: within 4 days and 10 % of mass', ({ at, plan: crop, on }) => {
    const north = climateOf(...at);
    const startDay = dayNumber(2027, ...on);
    const grown = (climate: MonthlyClimate, day: number) => ({
      ...runnerOf(openSite({ climate, years: 1, seed: 1 }), {
        ...planDefaults,
        ...crop,
        startDay: day,
      }).meanSeason(),
    });
    const a = grown(north, startDay);
    const b = grown(mirrored(north), startDay + halfYearDays);
    // a place where the crop ripens, or the comparison says little
    expect(a.reached).toBe(stage.fallen);
    expect(b.reached).toBe(stage.fallen);
    for (const date of ['emergedOn', 'plantedOn', 'onsetOn', 'fellOn'] as const)
      expect(Math.abs(b[date] - a[date]), `${date}: ${a[date]}, ${b[date]}`).toBeLessThanOrEqual(4);
    // the harvest; the shoot at onset is weighed while it grows, on days that may lie 4 apart
    expect(Math.abs(b.bulbDryG / a.bulbDryG - 1), `${a.bulbDryG}, ${b.bulbDryG} g`).toBeLessThanOrEqual(0.1);
  });
});
