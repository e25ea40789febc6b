import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { feed } from '../../src/keep/feed-lot.ts';
import type { LotTable } from '../../src/keep/kitchen-periods.ts';
import { type AreaQuestion, leastAreas } from '../../src/keep/solve-areas.ts';

const years = 5;
const periods = 6;
const mostSteps = 9;

/** A lot that is dear to eat from the longer it lies, in years that differ. */
const lotOf = fc
  .record({
    from: fc.integer({ min: 0, max: periods - 1 }),
    lasts: fc.integer({ min: 1, max: periods }),
    m2: fc.double({ min: 0.2, max: 1.5, noNaN: true }),
    spoils: fc.double({ min: 1, max: 1.6, noNaN: true }),
    byYear: fc.array(fc.double({ min: 0.6, max: 1.6, noNaN: true }), { minLength: years, maxLength: years }),
    likes: fc.integer({ min: 0, max: 3 }),
    likeSteps: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ from, lasts, m2, spoils, byYear, likes, likeSteps }): LotTable => {
    const table = new Float64Array(years * periods).fill(Number.POSITIVE_INFINITY);
    for (let year = 0; year < years; year++)
      for (let age = 0; age < lasts; age++)
        table[year * periods + ((from + age) % periods)] = m2 * byYear[year] * spoils ** age;
    return { from: new Int16Array(years).fill(from), m2: table, likes, likeSteps };
  });

const questionOf = fc.record({
  lots: fc.array(lotOf, { minLength: 1, maxLength: 3 }),
  required: fc
    .array(fc.integer({ min: 0, max: 1 }), { minLength: periods, maxLength: periods })
    .map((values) => Uint8Array.from(values)),
  enoughYears: fc.integer({ min: 3, max: years }),
  likes: fc.integer({ min: 0, max: 3 }),
  mostLots: fc.integer({ min: 1, max: 3 }),
});

function isFedBy(question: AreaQuestion, areas: readonly number[]): boolean {
  let need = new Float64Array(years * periods).fill(1);
  let answered = 0;
  question.lots.forEach((lot, at) => {
    const left = new Float64Array(years * periods);
    feed(lot, areas[at] * question.stepM2, need, left, years, periods);
    need = left;
    if (areas[at] >= lot.likeSteps) answered |= lot.likes;
  });
  let fed = 0;
  for (let year = 0; year < years; year++)
    if (question.required.every((must, at) => !must || need[year * periods + at] === 0)) fed++;
  return fed >= question.enoughYears && (question.likes & ~answered) === 0;
}

/** The least total of all areas up to so many steps a lot, each tried; null where none does. */
function tryAll(question: AreaQuestion): number | null {
  let least: number | null = null;
  const areas = question.lots.map(() => 0);
  const from = (at: number, used: number, sum: number): void => {
    if (at === areas.length) {
      if (used > 0 && (least === null || sum < least) && isFedBy(question, areas)) least = sum;
      return;
    }
    for (let steps = 0; steps <= mostSteps; steps++) {
      if (steps > 0 && used === question.mostLots) break;
      areas[at] = steps;
      from(at + 1, used + (steps > 0 ? 1 : 0), sum + steps);
    }
    areas[at] = 0;
  };
  from(0, 0, 0);
  return least;
}

const finest = Number.POSITIVE_INFINITY;

describe('the least areas', () => {
  test('are those that trying every area finds', () => {
    let compared = 0;
    fc.assert(
      fc.property(questionOf, (asked) => {
        const question: AreaQuestion = { ...asked, years, periods, stepM2: 1, fineSteps: finest };
        const areas = leastAreas(question);
        const naive = tryAll(question);
        if (areas !== null) expect(isFedBy(question, [...areas])).toBe(true);
        // an answer beyond the areas tried is no error of either
        if (areas?.some((steps) => steps > mostSteps)) return;
        compared++;
        expect(areas === null ? null : areas.reduce((sum, steps) => sum + steps, 0)).toBe(naive);
      }),
      { seed: 7, numRuns: 200 },
    );
    expect(compared).toBeGreaterThan(100);
  });

  test('of a bed of many steps are told in coarser ones, which feed as well', () => {
    const fineSteps = 4;
    let coarse = 0;
    fc.assert(
      fc.property(questionOf, (asked) => {
        const question: AreaQuestion = { ...asked, years, periods, stepM2: 1, fineSteps };
        const areas = leastAreas(question);
        const exact = leastAreas({ ...question, fineSteps: finest });
        expect(areas === null).toBe(exact === null);
        if (!areas || !exact) return;
        expect(isFedBy(question, [...areas])).toBe(true);
        const total = (of: Int32Array) => of.reduce((sum, steps) => sum + steps, 0);
        expect(total(areas)).toBeGreaterThanOrEqual(total(exact));
        // each lot is rounded up to steps at most so many times larger
        const times = [8, 4, 2, 1].find((by) => areas.every((steps) => steps % by === 0)) ?? 1;
        expect(total(areas)).toBeLessThan(total(exact) + times * question.mostLots);
        if (total(areas) > total(exact)) coarse++;
      }),
      { seed: 7, numRuns: 200 },
    );
    expect(coarse).toBeGreaterThan(10);
  });

  test('are never less for more people', () => {
    fc.assert(
      fc.property(questionOf, fc.double({ min: 1, max: 3, noNaN: true }), (asked, more) => {
        const question: AreaQuestion = { ...asked, years, periods, stepM2: 1, fineSteps: finest };
        const lots = asked.lots.map((lot) => ({ ...lot, m2: lot.m2.map((m2) => m2 * more) }));
        const few = leastAreas(question);
        const many = leastAreas({ ...question, lots });
        const total = (areas: Int32Array) => areas.reduce((sum, steps) => sum + steps, 0);
        expect(few === null).toBe(many === null);
        if (few && many) expect(total(many)).toBeGreaterThanOrEqual(total(few));
      }),
      { seed: 11, numRuns: 100 },
    );
  });
});
