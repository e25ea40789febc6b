import { describe, expect, test } from 'vitest';
import { believedDraws } from '../../src/learn/belief.ts';
import {
  type Belief,
  beliefAfter,
  beliefSite,
  learntParameters,
  usualBelief,
  usualSpread,
} from '../../src/learn/index.ts';
import { seasonEstimate, yearlyShare } from '../../src/learn/parameters.ts';
import { mean, standardDeviation } from '../../src/math/index.ts';
import { runPlan } from '../../src/season/index.ts';
import { plan, site } from './a-season.ts';

const nothingFound = { criticalH: null, ripening: null, phyllochron: null, growth: null };
const foundRipening = (value: number, sd: number) => ({ ...nothingFound, ripening: { mean: value, sd } });

describe('a belief', () => {
  test('of nothing seen spreads a season as every answer does', () => {
    for (const of of ['criticalH', 'ripening', 'phyllochron'] as const)
      expect(seasonEstimate(usualBelief(), of).sd).toBeCloseTo(usualSpread[of], 12);
    expect(beliefAfter(usualBelief(), nothingFound)).toEqual(usualBelief());
  });

  test('after a season that told nothing new is what it was', () => {
    const { ripening } = beliefAfter(usualBelief(), foundRipening(1, usualSpread.ripening));
    expect(ripening.mean).toBeCloseTo(1, 12);
    expect(ripening.sd).toBeCloseTo(usualBelief().ripening.sd, 12);
  });

  test('after a season known for sure leaves what a year brings, and no more', () => {
    const { ripening } = beliefAfter(usualBelief(), foundRipening(1.3, 0));
    // a share of 1 − 0.4² of what was found lasts
    expect(ripening.mean).toBeCloseTo(1 + 0.3 * (1 - yearlyShare ** 2), 12);
    const next = seasonEstimate({ ...usualBelief(), ripening }, 'ripening').sd;
    expect(next).toBeGreaterThan(yearlyShare * usualSpread.ripening);
    expect(next).toBeLessThan(0.6 * usualSpread.ripening);
    // growth is the same, as wide at first as any other
    const { growth } = beliefAfter(usualBelief(), { ...nothingFound, growth: { mean: 1.3, sd: 0 } });
    expect(growth?.mean).toBeCloseTo(ripening.mean, 12);
  });

  test('grows surer with each season alike, and never surer than a year’s own spread', () => {
    let belief: Belief = usualBelief();
    let before = Number.POSITIVE_INFINITY;
    for (let season = 0; season < 6; season++) {
      belief = beliefAfter(belief, foundRipening(1.3, 0.05));
      expect(belief.ripening.sd).toBeLessThan(before);
      before = belief.ripening.sd;
    }
    expect(belief.ripening.mean).toBeGreaterThan(1.27);
    expect(seasonEstimate(belief, 'ripening').sd).toBeGreaterThan(yearlyShare * usualSpread.ripening);
  });

  test('is drawn evenly about what was learnt', () => {
    const belief = {
      ...beliefAfter(usualBelief(), foundRipening(1.5, 0.02)),
      growth: { mean: 0.8, sd: 0.05 },
    };
    const draws = believedDraws(belief, 90, 1);
    const ripening = draws.map(({ ripeningFactor }) => ripeningFactor);
    const { mean: middle, sd } = seasonEstimate(belief, 'ripening');
    expect(mean(ripening)).toBeCloseTo(middle, 1);
    expect(standardDeviation(ripening) / sd).toBeCloseTo(1, 1);
    expect(mean(draws.map(({ growthFactor }) => growthFactor))).toBeCloseTo(0.8, 1);
    expect(learntParameters).toHaveLength(4);
    const { growthFactor, ripeningFactor } = beliefSite(site, belief).middleDraw;
    expect([growthFactor, ripeningFactor]).toEqual([0.8, middle]);
  });

  test('has no plants that shrink, however little of growth is believed', () => {
    const belief = { ...usualBelief(), growth: { mean: 0.1, sd: 0.5 } };
    for (const { growthFactor } of believedDraws(belief, 90, 1)) expect(growthFactor).toBeGreaterThan(0);
  });

  test('of slow ripening makes the next crop late', () => {
    const belief = beliefAfter(usualBelief(), foundRipening(1.3, 0.02));
    const believed = runPlan(beliefSite(site, belief), plan).neckFall.days!;
    const usual = runPlan(site, plan).neckFall.days!;
    expect(believed.p50 - usual.p50).toBeGreaterThan(5);
    expect(believed.p90 - believed.p10).toBeLessThan(usual.p90 - usual.p10);
  });
});
