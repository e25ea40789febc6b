import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../src/calendar/index.ts';
import { verdicts } from '../../src/plant/index.ts';
import {
  leafCheckpoint,
  medianSeasonDays,
  openSite,
  type PlanForm,
  planDefaults,
  runPlan,
} from '../../src/season/index.ts';
import { type LeafCount, partLeaves } from '../../src/season/leaf-checkpoint.ts';
import { climateOf } from '../weather/climates.ts';

const mean = [4, 5, 7, 10, 13, 16, 18, 18, 15, 11, 7, 4];
const site = openSite({ climate: climateOf({ latitudeDeg: 52, mean }), years: 20, seed: 1 });
const plan: PlanForm = {
  ...planDefaults,
  type: 'northern-long',
  start: 'direct-seed',
  startDay: dayNumber(2027, 3, 22),
};

describe('the day to count leaves', () => {
  const summary = runPlan(site, plan);
  const checkpoint = leafCheckpoint(site, summary)!;

  it('is three weeks before bulbs start, when the crop has stood for two', () => {
    expect(checkpoint.day).toBe(summary.onset.days!.p50 - 21);
    expect(checkpoint.day).toBeGreaterThanOrEqual(summary.emergence.days!.p50 + 14);
  });

  it('has the green leaves that stand then, fewer than when bulbs start', () => {
    const { p10, p50, p90 } = checkpoint.leavesGreen;
    expect(p10!).toBeLessThanOrEqual(p50!);
    expect(p50!).toBeLessThanOrEqual(p90!);
    expect(p50!).toBeLessThan(summary.leavesGreenAtOnset!.p50);
    const middling = medianSeasonDays(site, plan).find(({ day }) => day === checkpoint.day);
    expect(Math.abs(middling!.leavesGreen - p50!)).toBeLessThan(1.5);
  });

  it('is none where bulbs start too soon, or mostly never', () => {
    const after = (days: number) => ({
      ...summary,
      onset: { ...summary.onset, days: { ...summary.onset.days!, p50: summary.emergence.days!.p50 + days } },
    });
    expect(leafCheckpoint(site, after(35))).not.toBeNull();
    expect(leafCheckpoint(site, after(34))).toBeNull();
    expect(leafCheckpoint(site, { ...summary, onset: { ...summary.onset, share: 0.4 } })).toBeNull();
    const tropics = openSite({ climate: climateOf({ latitudeDeg: 5, mean: 26 }), years: 8, seed: 1 });
    expect(leafCheckpoint(tropics, runPlan(tropics, plan))).toBeNull();
  });

  it('waits for raised seedlings to be in their bed', () => {
    const raised = runPlan(site, { ...plan, start: 'raised-seedlings', startDay: dayNumber(2027, 2, 20) });
    const found = leafCheckpoint(site, raised);
    if (found) expect(found.day).toBeGreaterThanOrEqual(raised.plantOut!.days!.p50 + 14);
  });
});

describe('leaves that part good years from small ones', () => {
  const years = (count: number, leavesGreen: number, verdict: LeafCount['verdict'], bulbMm: number) =>
    Array.from({ length: count }, (): LeafCount => ({ leavesGreen, bulbMm, verdict }));

  it('are the whole number that tells most years right', () => {
    const counts = [
      ...years(6, 5.2, 'small', 45),
      ...years(1, 5.4, 'good', 58),
      ...years(2, 5.9, 'small', 49),
      ...years(4, 6.4, 'good', 57),
      ...years(10, 7.8, 'good', 62),
    ];
    // 5.9 is seen as six leaves
    expect(partLeaves(counts)).toEqual({ smallUpTo: 5, goodMm: 62, smallMm: 45 });
  });

  it('are counted as a grower sees them, to the nearest whole', () => {
    expect(partLeaves([...years(8, 5.4, 'small', 45), ...years(8, 5.6, 'good', 60)])).toMatchObject({
      smallUpTo: 5,
    });
  });

  it('are none where few and many leaves end alike', () => {
    expect(partLeaves([...years(8, 5, 'good', 60), ...years(8, 7, 'good', 60)])).toBeNull();
    expect(partLeaves([...years(8, 5, 'small', 45), ...years(8, 7, 'small', 46)])).toBeNull();
    expect(partLeaves([...years(16, 6, 'good', 60), ...years(8, 6, 'small', 45)])).toBeNull();
  });

  it('are none where more leaves go with smaller bulbs', () => {
    expect(partLeaves([...years(8, 5, 'good', 60), ...years(8, 7, 'small', 46)])).toBeNull();
  });

  it('are none where the bulbs differ too little to count leaves for', () => {
    const parted = (smallMm: number) =>
      partLeaves([...years(8, 5, 'small', smallMm), ...years(8, 7, 'good', 57)]);
    expect(parted(53)).toBeNull();
    expect(parted(52)).toEqual({ smallUpTo: 5, goodMm: 57, smallMm: 52 });
  });

  it('are none by chance of a few years, or by years that end in flower', () => {
    expect(partLeaves([...years(4, 5, 'small', 45), ...years(20, 7, 'good', 60)])).toBeNull();
    expect(partLeaves([...years(8, 5, 'bolts', 45), ...years(20, 7, 'good', 60)])).toBeNull();
  });

  it('always tell most years right on both sides', () => {
    const anyYear = fc.record({
      leavesGreen: fc.double({ min: 0, max: 12, noNaN: true }),
      bulbMm: fc.double({ min: 20, max: 90, noNaN: true }),
      verdict: fc.constantFrom(...verdicts),
    });
    fc.assert(
      fc.property(fc.array(anyYear, { maxLength: 60 }), (counts) => {
        const found = partLeaves(counts);
        if (!found) return;
        const told = counts.filter(({ verdict }) => verdict === 'good' || verdict === 'small');
        const few = told.filter(({ leavesGreen }) => Math.round(leavesGreen) <= found.smallUpTo);
        const many = told.filter((count) => !few.includes(count));
        const share = (of: LeafCount[], verdict: string) =>
          of.filter((count) => count.verdict === verdict).length / of.length;
        expect(share(few, 'small')).toBeGreaterThanOrEqual(2 / 3);
        expect(share(many, 'good')).toBeGreaterThanOrEqual(2 / 3);
        expect(found.goodMm - found.smallMm).toBeGreaterThanOrEqual(5);
      }),
      { seed: 7 },
    );
  });
});
