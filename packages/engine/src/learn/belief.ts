import { evenNormals, randomSource } from '../math/index.ts';
import { type Draw, drawsOf, type Site } from '../season/index.ts';
import {
  type Belief,
  drawOf,
  type Estimate,
  type LearntParameter,
  learntParameters,
  ofEach,
  seasonEstimate,
  usualBelief,
  usualLasting,
  usualSpread,
  yearlyShare,
} from './parameters.ts';

/** Apart from the sequences of weather and of usual draws. */
const seedFactor = 7;

/**
 * What a season has told of the onion at its place for the next: what it found, less the part that the year brought
 * (Kalman 1960, the update of a state seen through a noisy season).
 */
export function beliefAfter(before: Belief, found: Record<LearntParameter, Estimate | null>): Belief {
  const after = (of: LearntParameter): Estimate => {
    const lasting = before[of] ?? usualLasting(of);
    const seen = found[of];
    if (seen === null) return lasting;
    const { mean, sd } = lasting;
    const yearly = yearlyShare * usualSpread[of];
    const gain = sd ** 2 / (sd ** 2 + yearly ** 2);
    return {
      mean: mean + gain * (seen.mean - mean),
      sd: Math.sqrt(sd ** 2 * (1 - gain) + (gain * seen.sd) ** 2),
    };
  };
  const isGrowthKnown = found.growth !== null || before.growth !== null;
  return { ...ofEach(after), growth: isGrowthKnown ? after('growth') : null };
}

/** Draws of seasons as believed, each parameter spread evenly as `drawsOf` does. */
export function believedDraws(belief: Belief, count: number, seed: number): Draw[] {
  const random = randomSource(seed * seedFactor + 1);
  const columns = ofEach((of) => {
    const { mean, sd } = seasonEstimate(belief, of);
    return evenNormals(count, random).map((z) => mean + sd * z);
  });
  return Array.from({ length: count }, (_, at) => drawOf(ofEach((of) => columns[of][at])));
}

/** The site as it is for plants that one has learnt of: draws about what was learnt, as wide as what is left open. */
export function beliefSite(site: Site, belief: Belief): Site {
  let draws: Draw[] | null = null;
  return {
    ...site,
    draws() {
      draws ??= isUsual(belief)
        ? drawsOf(site.years, site.seed)
        : believedDraws(belief, site.years, site.seed);
      return draws;
    },
    middleDraw: drawOf(ofEach((of) => seasonEstimate(belief, of).mean)),
  };
}

function isUsual(belief: Belief): boolean {
  const usual = usualBelief();
  return learntParameters.every(
    (of) => belief[of]?.mean === usual[of]?.mean && belief[of]?.sd === usual[of]?.sd,
  );
}
