import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alsoFed } from '../../src/keep/also-fed.ts';
import { periodDays, yearPeriods } from '../../src/keep/kitchen-periods.ts';

const years = 20;
const yearDays = 365;

/** By year: the stretch of days that went unfed, and the first and last period that the plan was made for. */
const anyYear = fc.record({
  bare: fc.array(fc.tuple(fc.integer({ min: 0, max: 364 }), fc.integer({ min: 0, max: 90 })), {
    minLength: years,
    maxLength: years,
  }),
  from: fc.integer({ min: 0, max: 51 }),
  length: fc.integer({ min: 1, max: 52 }),
});

/** Years in which no day of these periods is bare. */
function fedYears(unfed: Float64Array, periods: Uint8Array): number {
  let count = 0;
  for (let year = 0; year < years; year++) {
    const isBare = (day: number) =>
      unfed[year * yearDays + day] > 0 &&
      periods.some((one, at) => one && day >= Math.floor(at * periodDays) && day < (at + 1) * periodDays);
    if (!Array.from({ length: yearDays }, (_, day) => day).some(isBare)) count++;
  }
  return count;
}

test('what a plan feeds besides is no gap, as far as enough years are fed through it all, and no farther', () => {
  fc.assert(
    fc.property(anyYear, fc.integer({ min: 1, max: years }), ({ bare, from, length }, enough) => {
      const unfed = new Float64Array(years * yearDays);
      for (const [year, [first, days]] of bare.entries())
        for (let day = 0; day < days; day++) unfed[year * yearDays + ((first + day) % yearDays)] = 1;
      const required = new Uint8Array(yearPeriods);
      for (let at = 0; at < length; at++) required[(from + at) % yearPeriods] = 1;
      const fed = alsoFed(unfed, required, years, enough);
      expect(required.every((one, at) => fed[at] >= one)).toBe(true);
      if (fed.some((one, at) => one > required[at]))
        expect(fedYears(unfed, fed)).toBeGreaterThanOrEqual(enough);
      for (let at = 0; at < yearPeriods; at++) {
        if (fed[at] || !(fed[(at + 1) % yearPeriods] || fed[(at + yearPeriods - 1) % yearPeriods])) continue;
        const wider = Uint8Array.from(fed);
        wider[at] = 1;
        expect(fedYears(unfed, wider)).toBeLessThan(enough);
      }
    }),
    { seed: 15, numRuns: 40 },
  );
});

test('of no plan at all nothing is fed', () => {
  const none = new Uint8Array(yearPeriods);
  expect(alsoFed(new Float64Array(years * yearDays), none, years, 1)).toEqual(none);
});
