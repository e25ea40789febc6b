import type { LiftVerdict } from './lift-advice.ts';

/** Days ahead that are looked through for a better one. */
export const liftAhead = 61;

/** From this share over on bulbs are lifted: 60–80 % is the best compromise (Wright et al. 2001). */
const liftFromShare = 0.6;
/** Fewer over than this are no sign of ripeness, whatever rain comes (UC Davis: 10–20 % over as index). */
const leastShare = 0.1;
/** A day is as good as another where no more than this of the crop's worth lies between (ours). */
const asGood = 0.02;
/** In ten days so much rain is a wet spell, mm (common practice, no source). */
export const wetSpellMm = 25;

/**
 * What to do today. More rain can only raise what later days lose against today, and more tops over what today loses
 * least: neither ever makes a lifting later.
 */
export function chooseLift(of: {
  /** Share of the crop's worth lost by lifting in so many days. */
  losses: ArrayLike<number>;
  topsOverShare: number;
  /** Of the tops, over in two weeks. */
  soonShare: number;
  rainMm: number;
  hasBulbs: boolean;
  /** Whether tops go over in most seasons; where they don't, the gain alone decides. */
  ripens: boolean;
}): { verdict: Exclude<LiftVerdict, 'lifted'>; after: number } {
  const { losses, topsOverShare, rainMm } = of;
  let after = 0;
  for (let day = 1; day < losses.length; day++) if (losses[day] < losses[after] - 1e-9) after = day;
  const isAsGood = losses[0] - losses[after] <= asGood;
  if (!of.hasBulbs) return { verdict: 'too-early', after };
  if (topsOverShare >= liftFromShare || (!of.ripens && isAsGood)) return { verdict: 'lift', after: 0 };
  if (of.ripens && of.soonShare < leastShare) return { verdict: 'too-early', after };
  if (topsOverShare >= leastShare && rainMm >= wetSpellMm && isAsGood)
    return { verdict: 'before-rain', after: 0 };
  return { verdict: 'wait', after: Math.max(1, after) };
}
