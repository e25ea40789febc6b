import fc from 'fast-check';
import { dayNumber, onionTypes, type PlanForm, startMethods } from '../../packages/engine/src/index.ts';
import { isCovered } from './places.ts';

/** Anywhere the program answers for: land from 60° S to 72° N. */
export const points = fc
  .tuple(fc.integer({ min: -600, max: 720 }), fc.integer({ min: -1800, max: 1799 }))
  .map(([lat, lon]) => [lat / 10, lon / 10] as const)
  .filter(([lat, lon]) => isCovered(lat, lon));

const leapDays = [2000, 2028, 2096].map((year) => dayNumber(year, 2, 29));
export const days = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: dayNumber(1950, 1, 1), max: dayNumber(2099, 12, 31) }) },
  { weight: 1, arbitrary: fc.constantFrom(...leapDays, dayNumber(2028, 12, 31), dayNumber(2027, 1, 1)) },
);

export const plans: fc.Arbitrary<PlanForm> = fc
  .record({
    type: fc.constantFrom(...onionTypes),
    start: fc.constantFrom(...startMethods),
    startDay: days,
    plantOutAfter: fc.option(fc.integer({ min: 1, max: 120 })),
    densityPerM2: fc.double({ min: 1, max: 400, noNaN: true }),
    setSizeMm: fc.double({ min: 5, max: 40, noNaN: true }),
    setStore: fc.constantFrom('cold', 'warm'),
    cover: fc.constantFrom('none', 'fleece', 'tunnel'),
    sunHours: fc.option(fc.double({ min: 0, max: 24, noNaN: true })),
    water: fc.constantFrom('watered', 'rain'),
    soil: fc.constantFrom('sand', 'loam', 'clay'),
    nurseryTempC: fc.option(fc.double({ min: 5, max: 30, noNaN: true })),
    lampHours: fc.option(fc.double({ min: 0, max: 24, noNaN: true })),
  })
  .map(({ plantOutAfter, ...plan }) => ({
    ...plan,
    plantOutDay: plantOutAfter === null ? null : plan.startDay + plantOutAfter,
  })) as fc.Arbitrary<PlanForm>;
