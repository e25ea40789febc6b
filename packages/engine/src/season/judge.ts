import { bulbMassG, type OnionType, type Verdict, verdicts } from '../plant/index.ts';
import { type Outcome, stage } from './outcome.ts';
import type { Plan } from './plan.ts';
import type { SeasonShares } from './summary.ts';

/** Limits of the verdicts: shares of plants, and share of the best bulb this place grows this way. */
export const limits = { killed: 0.5, bolted: 0.25, smallShare: 0.6 } as const;

/** Bulbs under this are small at 40 plants per m², mm (common practice, no source); tropical reds and pinks are a small onion. */
const smallMm: Readonly<Record<OnionType, number>> = {
  'tropical-short': 38,
  short: 55,
  intermediate: 55,
  'early-long': 55,
  'northern-long': 55,
};
/** Bulb mass goes as 1 / (this + plants per m²) (Mead 1970 and Rogers in Ratkowsky 1983: a / b of seven fields 12–36). */
const loneDensityPerM2 = 25;
const usualPerM2 = 40;

/** Fresh mass under which a bulb is small for the room it had, g. */
export function smallBulbG(type: OnionType, densityPerM2: number): number {
  const room = (loneDensityPerM2 + usualPerM2) / (loneDensityPerM2 + densityPerM2);
  return bulbMassG(smallMm[type]) * room;
}

/**
 * Dry matter of a bulb that is full size anywhere, g: about 130 g fresh, 64 mm. Density trials at 40 plants per m² give
 * 86–182 g (Rogers; Mead 1970); a place that grows larger ones does not make this one small.
 */
export const fullSizeDryG = 13;

/** What became of one season, worst first: the order is part of the meaning. */
export function judge(
  outcome: Outcome,
  { type, densityPerM2 }: Pick<Plan, 'type' | 'densityPerM2'>,
  dryMatterShare: number,
  referenceDryG: number,
): Verdict {
  if (outcome.aliveShare < limits.killed) return 'winter-killed';
  if (outcome.boltedShare > limits.bolted) return 'bolts';
  if (outcome.reached < stage.onset) return 'no-bulb';
  if (outcome.reached < stage.fallen || outcome.reverted) return 'not-ripe';
  const tooSmall =
    outcome.bulbDryG / dryMatterShare < smallBulbG(type, densityPerM2) ||
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
