import { runPlan, startMethods } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { standOn } from '../../src/facts/index.ts';
import { planOf, site } from '../frosty-place.ts';

describe.each(startMethods)('a season from %s', (start) => {
  const plan = planOf(start);
  const summary = runPlan(site, plan);
  const neckFall = summary.neckFall.days!.p50;

  test('counts the years in which tops are over, and the leaves of the others', () => {
    const at = (day: number) => standOn(site, plan, day);
    expect(at(plan.startDay - 1)).toMatchObject({
      leavesGreen: null,
      bulbMm: null,
      fallenShare: 0,
      lostShare: 0,
    });
    expect(at(summary.neckFall.days!.p90 + 40).fallenShare).toBe(summary.neckFall.share);
    const half = at(neckFall).fallenShare;
    expect(half).toBeGreaterThanOrEqual(0.4);
    expect(half).toBeLessThanOrEqual(0.75);
    const { leavesGreen, bulbMm } = at(
      Math.round((summary.onset.days!.p90 + summary.neckFall.days!.p10) / 2),
    );
    expect(leavesGreen!.low).toBeGreaterThan(1);
    expect(leavesGreen!.high).toBeGreaterThanOrEqual(leavesGreen!.low);
    expect(bulbMm!.low).toBeGreaterThan(5);
    expect(bulbMm!.high).toBeLessThan(summary.bulbDiameterMm!.p90 + 1);
  });
});
