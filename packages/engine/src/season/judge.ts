import type { Verdict } from '../plant/index.ts';
import { bulbDiameterMm, verdicts } from '../plant/index.ts';
import { type Outcome, stage } from './outcome.ts';
import type { SeasonShares } from './summary.ts';

/** Limits of the verdicts: shares of plants, mm, and share of the best bulb this place grows this way. */
export const limits = { killed: 0.5, bolted: 0.25, smallMm: 45, smallShare: 0.6 } as const;

/**
 * Dry matter of a bulb that is full size anywhere, g: about 130 g fresh, 64 mm. Density trials at 40 plants per m² give
 * 86–182 g (Rogers; Mead 1970); a place that grows larger ones does not make this one small.
 */
export const fullSizeDryG = 13;

/** What became of one season, worst first: the order is part of the meaning. */
export function judge(outcome: Outcome, dryMatterShare: number, referenceDryG: number): Verdict {
  if (outcome.aliveShare < limits.killed) return 'winter-killed';
  if (outcome.boltedShare > limits.bolted) return 'bolts';
  if (outcome.reached < stage.onset) return 'no-bulb';
  if (outcome.reached < stage.fallen || outcome.reverted) return 'not-ripe';
  const tooSmall =
    bulbDiameterMm(outcome.bulbDryG / dryMatterShare) < limits.smallMm ||
    outcome.bulbDryG < limits.smallShare * Math.min(referenceDryG, fullSizeDryG);
  return tooSmall ? 'small' : 'good';
}

/** What is said of many seasons: good if at least half are, else the commonest failure. */
export function outcomeOf(shares: SeasonShares): { outcome: Verdict; gamble: boolean } {
  if (shares.good >= 0.5) return { outcome: 'good', gamble: false };
  let worst: Verdict = 'winter-killed';
  for (const verdict of verdicts) if (verdict !== 'good' && shares[verdict] > shares[worst]) worst = verdict;
  return { outcome: worst, gamble: shares.good > 0 && shares.good >= shares[worst] };
}
