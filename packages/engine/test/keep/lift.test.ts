import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatDay } from '../../src/calendar/index.ts';
import { liftAdvice } from '../../src/keep/index.ts';
import { liftLosses } from '../../src/keep/lift-loss.ts';
import { liftRun } from '../../src/keep/lift-run.ts';
import { chooseLift, liftAhead } from '../../src/keep/lift-verdict.ts';
import { topsOverShare } from '../../src/plant/index.ts';
import { cropOn, startDay } from '../tend/a-crop.ts';

const crop = cropOn(150);
const { forgone } = liftRun(crop.site, crop.plan);
const fallOn = crop.summary.neckFall.days!.p50;

/** A stand that goes over in some days, under so much rain a day. */
function chosen(fallsIn: number, rainMm: (day: number) => number) {
  const losses = liftLosses([{ fallsOn: fallsIn, rainMm }], forgone, 0, liftAhead);
  const rain = Array.from({ length: 10 }, (_, at) => rainMm(at + 1)).reduce((sum, mm) => sum + mm, 0);
  return chooseLift({
    losses,
    topsOverShare: topsOverShare(-fallsIn),
    soonShare: topsOverShare(14 - fallsIn),
    rainMm: rain,
    hasBulbs: true,
    ripens: true,
  });
}

const seen = (share: number, today: number) =>
  liftAdvice({
    ...crop,
    today,
    observations: [{ id: 'a', plantingId: 'bed', date: formatDay(today), topsOverShare: share }],
  })!;

describe('the day to lift', () => {
  test('is never later for more rain', () => {
    const rains = fc.array(fc.double({ min: 0, max: 20, noNaN: true }), { minLength: 90, maxLength: 90 });
    let moved = 0;
    fc.assert(
      fc.property(fc.integer({ min: -10, max: 25 }), rains, rains, (fallsIn, dry, more) => {
        const rain = (day: number) => (day < 0 ? 0 : dry[day]);
        const before = chosen(fallsIn, rain);
        const after = chosen(fallsIn, (day) => rain(day) + (day < 0 ? 0 : more[day]));
        expect(after.after).toBeLessThanOrEqual(before.after);
        if (after.after < before.after) moved++;
      }),
      { seed: 70, numRuns: 200 },
    );
    expect(moved).toBeGreaterThan(5);
  });

  test('is never later for more tops over', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (a, b) => {
          const [fewer, more] = [Math.min(a, b), Math.max(a, b)].map((share) => seen(share, fallOn - 2));
          expect(more.best!).toBeLessThanOrEqual(fewer.best!);
          expect(more.topsOverShare).toBeGreaterThanOrEqual(fewer.topsOverShare);
        },
      ),
      { seed: 71, numRuns: 30 },
    );
  });

  test('is today from 60 to 80 % over in dry weather, and sooner before a wet spell (Wright et al. 2001)', () => {
    for (const share of [0.62, 0.7, 0.8]) expect(seen(share, fallOn).verdict).toBe('lift');
    const inDays = 3;
    expect(chosen(inDays, () => 0).verdict).toBe('wait');
    expect(chosen(inDays, () => 12)).toEqual({ verdict: 'before-rain', after: 0 });
  });

  test('never comes before bulbs have started', () => {
    const onset = crop.summary.onset.days!.p50;
    for (let today = startDay - 20; today <= onset; today += 7)
      expect(liftAdvice({ ...crop, today })!.verdict).toBe('too-early');
    expect(seen(0.9, onset - 5).verdict).toBe('too-early');
  });

  test('costs more the later, three weeks after half were over', () => {
    const losses = liftLosses([{ fallsOn: 4, rainMm: () => 2 }], forgone, 0, liftAhead);
    expect(losses[21]).toBeGreaterThan(losses[4] + 0.08);
  });
});

test('two weeks before their best bulbs lack about what a published shift in size tells', () => {
  // jumbo bulbs 28 → 48 % between early and optimum, about two weeks: a fifth of the mass where bulbs spread by 0.4
  expect(forgone(14)).toBeGreaterThan(0.1);
  expect(forgone(14)).toBeLessThan(0.45);
});

test('tops that were seen say more than the run, and a lifted crop is told as lifted', () => {
  const { topsFrom, topsOverShare: share } = seen(0.3, fallOn - 2);
  expect(topsFrom).toBe('seen');
  expect(share).toBeCloseTo(0.3, 2);
  const lifted = liftAdvice({ ...crop, today: fallOn + 8, liftedOn: fallOn + 2 })!;
  expect(lifted).toMatchObject({ verdict: 'lifted', best: null });
  expect(lifted.drying).toHaveLength(3);
});
