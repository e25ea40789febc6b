import { resampled, tempered, weightsOf } from '../learn/index.ts';
import { randomSource } from '../math/index.ts';
import { type KeepingCurve, keepingCurve, keptDays, type StoredLot } from './keeping.ts';
import type { StoreClimate } from './store-climate.ts';
import { type StoreDraw, storeDrawsOf } from './store-draw.ts';

/**
 * A look at the store. Bad bulbs are taken out at each, so that the next counts what has gone since; where it counts more
 * bulbs than were left sound, they were not, and it counts what has gone since lifting.
 */
export type StoreCheck = {
  /** Days since lifting, whole. */
  day: number;
  /** Bulbs found; of sound ones those that should be there where they were not counted, null where that is not known. */
  sound: number | null;
  isSoundCounted: boolean;
  sprouted: number;
  rotten: number;
  /** Mean weight of a sound bulb as a share of what it was when lifted; null where not weighed. */
  massShare: number | null;
};

/** Draws that the checks choose among. */
const tried = 3000;

/** Answers hang on no fewer of them (as in the learning of crops). */
export const leastEffective = 60;

/** Bulbs of a crate fare alike: correlation between any two of a look (memory, adjustable). */
const alike = 0.02;

/** What eye and model leave open in the weight of a bulb, standard deviation of its share (memory, adjustable). */
const massSd = 0.04;

/**
 * Weight of a look whose sound bulbs were not counted. Some of those that should be there were eaten, nobody noted how many,
 * so that a greater share went bad than it shows: it says the same as a count, half as surely (memory, adjustable).
 */
const uncountedWeight = 0.5;

/** No count is ruled out: share of slips of the eye (memory, adjustable). */
const slip = 0.004;

/**
 * How fast this store loses this lot, after the grower's own checks: draws of the prior weighed by what was found, then
 * drawn anew, `seasons` of them. Without a check: the prior. `liftedOn` the climate day of lifting.
 */
export function learnStore(
  lot: StoredLot,
  store: StoreClimate,
  liftedOn: number,
  checks: readonly StoreCheck[],
  seasons: number,
  seed: number,
): StoreDraw[] {
  const told = tellingChecks(checks);
  if (told.length === 0) return storeDrawsOf(seasons, seed);
  const prior = storeDrawsOf(tried, seed);
  const logs = prior.map((draw) => logLikelihood(keepingCurve(lot, store, liftedOn, draw), told));
  const weights = tempered(weightsOf(logs), leastEffective);
  return resampled(weights, seasons, randomSource(seed * 2 + 0x6c73)).map((at) => prior[at]);
}

/** Looks that tell something, in the order of their days. */
export function tellingChecks(checks: readonly StoreCheck[]): StoreCheck[] {
  return checks
    .filter(
      ({ day, sound, sprouted, rotten }) => day > 0 && day < keptDays && (sound ?? 0) + sprouted + rotten > 0,
    )
    .sort((a, b) => a.day - b.day);
}

/** Of the shares found, as a multinomial whose sample counts for less since bulbs fare alike (design effect, Kish 1965). */
export function logLikelihood(curve: KeepingCurve, checks: readonly StoreCheck[]): number {
  let sum = 0;
  let before: StoreCheck | null = null;
  for (const check of checks) {
    const { day, sound, sprouted, rotten } = check;
    const bad = sprouted + rotten;
    const found = (sound ?? 0) + bad;
    const hasRoom: boolean =
      before !== null && (before.sound === null || sound === null || found <= before.sound);
    const from: number = before !== null && hasRoom ? before.day : 0;
    const left = Math.max(1e-9, curve.sound[from]);
    const since = (of: Float64Array) => (of[day] - of[from]) / left;
    const log = (share: number) => Math.log((1 - 3 * slip) * Math.max(0, share) + slip);
    const [sprouting, rotting] = [log(since(curve.sprouted)), log(since(curve.rotten))];
    const bads = sprouted * sprouting + rotten * rotting;
    // of an unknown number, only how the bad ones went bad can be told: eating changes nothing of that
    const ofWhat =
      sound === null
        ? -bad * Math.log(Math.exp(sprouting) + Math.exp(rotting))
        : sound * log(curve.sound[day] / left);
    const counts = (check.isSoundCounted ? 1 : uncountedWeight) * (bads + ofWhat);
    sum += counts / (1 + (found - 1) * alike);
    if (check.massShare !== null) sum -= ((check.massShare - curve.massShare[day]) / massSd) ** 2 / 2;
    before = check;
  }
  return sum;
}
