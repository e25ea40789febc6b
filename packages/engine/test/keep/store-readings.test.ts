import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readClimateNodes } from '../../../data/src/node.ts';
import {
  climateAt,
  climateDayOf,
  dayNumber,
  formatDay,
  type StorePlace,
  type StoreReading,
  storeClimateOf,
  storePlaces,
  storeWith,
} from '../../src/index.ts';

const nodes = readClimateNodes(new URL('../../../data/assets/climate.bin', import.meta.url).pathname);
const climates = [
  climateAt(nodes, 53.8, -1.55, 60),
  climateAt(nodes, 43.62, -116.2, 825),
  climateAt(nodes, -1.29, 36.82, 1700),
  climateAt(nodes, -41, 175, 20),
];
const first = dayNumber(2026, 1, 1);
const seeded = { seed: 20270112, numRuns: 200 };
const anyClimate = fc.constantFrom(...climates);
const anyPlace = fc.constantFrom(...storePlaces);
const days = fc.array(fc.integer({ min: 0, max: 720 }), { minLength: 1, maxLength: 12 });

const reading = (store: StorePlace, after: number, tempC: number, humidityPct: number | null = null) =>
  ({ date: formatDay(first + after), store, tempC, humidityPct }) satisfies StoreReading;
const at = (after: number) => climateDayOf(first + after);

describe('readings of a store', () => {
  test('that are the usual ones change nothing', () => {
    fc.assert(
      fc.property(anyClimate, anyPlace, days, (climate, place, read) => {
        const usual = storeClimateOf(climate, place);
        const readings = read.map((day) =>
          reading(place, day, usual.tempC[at(day)], usual.humidityPct[at(day)]),
        );
        expect(storeClimateOf(climate, storeWith(place, readings))).toEqual(usual);
      }),
      seeded,
    );
  });

  test('that are all warmer never make it colder, and none makes it warmer than it was read', () => {
    const warmer = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 720 }), fc.double({ min: 0, max: 12, noNaN: true })),
      {
        minLength: 1,
        maxLength: 12,
      },
    );
    fc.assert(
      fc.property(anyClimate, anyPlace, warmer, (climate, place, read) => {
        const usual = storeClimateOf(climate, place).tempC;
        const readings = read.map(([day, by]) => reading(place, day, usual[at(day)] + by));
        const { tempC } = storeClimateOf(climate, storeWith(place, readings));
        const most = Math.max(...read.map(([, by]) => by));
        for (let day = 0; day < 365; day++) {
          expect(tempC[day]).toBeGreaterThanOrEqual(usual[day]);
          expect(tempC[day]).toBeLessThanOrEqual(usual[day] + most + 1e-9);
        }
      }),
      seeded,
    );
  });

  test('read warmer by the same everywhere make every day warmer', () => {
    const read = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 720 }), fc.double({ min: -5, max: 25, noNaN: true })),
      {
        minLength: 1,
        maxLength: 8,
      },
    );
    fc.assert(
      fc.property(
        anyClimate,
        anyPlace,
        read,
        fc.double({ min: 0.5, max: 8, noNaN: true }),
        (climate, place, of, by) => {
          const drawn = (more: number) =>
            storeClimateOf(
              climate,
              storeWith(
                place,
                of.map(([day, tempC]) => reading(place, day, tempC + more)),
              ),
            ).tempC;
          const before = drawn(0);
          drawn(by).forEach((tempC, day) => {
            expect(tempC).toBeGreaterThanOrEqual(before[day] - 1e-9);
          });
        },
      ),
      seeded,
    );
  });

  test('one of them shifts the year; several in different seasons stretch it too', () => {
    const [leeds] = climates;
    const usual = storeClimateOf(leeds, 'shed').tempC;
    const swing = (values: Float64Array) => Math.max(...values) - Math.min(...values);
    const one = storeClimateOf(leeds, storeWith('shed', [reading('shed', 20, usual[at(20)] + 5)])).tempC;
    expect(one[200] - usual[200]).toBeCloseTo(4, 1);
    expect(swing(one)).toBeCloseTo(swing(usual), 6);
    const both = [reading('shed', 20, usual[at(20)] + 5), reading('shed', 200, usual[at(200)] - 3)];
    expect(swing(storeClimateOf(leeds, storeWith('shed', both)).tempC)).toBeLessThan(0.8 * swing(usual));
  });

  const weeks = Array.from({ length: 52 }, (_, week) => 7 * week);
  const meanOff = (a: Float64Array, b: Float64Array) =>
    a.reduce((sum, value, day) => sum + Math.abs(value - b[day]), 0) / a.length;

  test('week by week come within half a degree of any year that is the usual one shifted and stretched', () => {
    const shifts = fc.double({ min: -6, max: 6, noNaN: true });
    const stretches = fc.double({ min: 0.4, max: 1.7, noNaN: true });
    fc.assert(
      fc.property(anyClimate, anyPlace, shifts, stretches, (climate, place, shift, stretch) => {
        const usual = storeClimateOf(climate, place).tempC;
        const truth = usual.map((tempC) => usual[0] + shift + stretch * (tempC - usual[0]));
        const readings = weeks.map((day) => reading(place, day, truth[at(day)]));
        const { tempC } = storeClimateOf(climate, storeWith(place, readings));
        expect(meanOff(tempC, truth)).toBeLessThan(0.5);
      }),
      seeded,
    );
  });

  test('of what is another kind of store come nearer to it, in warmth and damp', () => {
    for (const climate of climates)
      for (const [place, other] of [
        ['garage', 'cellar'],
        ['cellar', 'shed'],
        ['shed', 'garage'],
        ['kitchen', 'garage'],
      ] as const) {
        const truth = storeClimateOf(climate, other);
        const usual = storeClimateOf(climate, place);
        const readings = weeks.map((day) =>
          reading(place, day, truth.tempC[at(day)], truth.humidityPct[at(day)]),
        );
        const drawn = storeClimateOf(climate, storeWith(place, readings));
        for (const field of ['tempC', 'humidityPct'] as const)
          expect(meanOff(drawn[field], truth[field]), `${place} as ${other}`).toBeLessThan(
            meanOff(usual[field], truth[field]),
          );
      }
  });

  test('of another store say nothing of this one', () => {
    expect(storeWith('cellar', [reading('shed', 20, 3)])).toBe('cellar');
  });

  test('of humidity alone move no temperature, and keep within what can be', () => {
    const [leeds] = climates;
    const usual = storeClimateOf(leeds, 'cellar');
    const damp = storeClimateOf(
      leeds,
      storeWith('cellar', [reading('cellar', 20, usual.tempC[at(20)], 100)]),
    );
    expect(damp.tempC).toEqual(usual.tempC);
    damp.humidityPct.forEach((value, day) => {
      expect(value).toBeGreaterThan(usual.humidityPct[day]);
      expect(value).toBeLessThanOrEqual(100);
    });
  });
});
