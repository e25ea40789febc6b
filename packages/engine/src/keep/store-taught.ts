import { resampled, tempered, weightsOf } from '../learn/index.ts';
import { evenNormals, randomSource } from '../math/index.ts';
import { keepingCurve, type StoredLot } from './keeping.ts';
import { leastEffective, logLikelihood, type StoreCheck, tellingChecks } from './learn-store.ts';
import type { StoreClimate } from './store-climate.ts';
import { type StoreDraw, storeDrawOf, storeDrawsOf } from './store-draw.ts';

/** A lot that was kept, with the looks at it; `liftedOn` the climate day of lifting. */
export type LookedAt = {
  lot: StoredLot;
  store: StoreClimate;
  liftedOn: number;
  checks: readonly StoreCheck[];
};

/** Of the variance of stores and lots so much belongs to the store, for all that is kept there; the rest to each lot (memory, adjustable). */
const ofTheStore = 0.5;

/** Stores that the looks choose among. */
const tried = 1500;

/**
 * How fast a store will lose lots to come, after looks at what was kept there: what its lots have in common is learnt, what
 * each had of its own is drawn anew. Without a look: the prior.
 */
export function taughtStoreDraws(
  looked: readonly LookedAt[],
  count: number,
  seed: number,
): readonly StoreDraw[] {
  const told = looked
    .map((one) => ({ ...one, checks: tellingChecks(one.checks) }))
    .filter(({ checks }) => checks.length > 0);
  if (told.length === 0) return storeDrawsOf(count, seed);
  const random = randomSource(seed * 2 + 0x7465);
  const normals = (of: number) => [0, 1, 2].map(() => evenNormals(of, random));
  const stores = normals(tried);
  const logs = new Float64Array(tried);
  for (const { lot, store, liftedOn, checks } of told) {
    // one lot of its own for each store: its chance averages out over the stores
    const own = normals(tried);
    for (let at = 0; at < tried; at++) {
      const draw = drawOf(stores, at, own, at);
      logs[at] += logLikelihood(keepingCurve(lot, store, liftedOn, draw), checks);
    }
  }
  const weights = tempered(weightsOf(logs), leastEffective);
  const own = normals(count);
  return resampled(weights, count, random).map((store, lot) => drawOf(stores, store, own, lot));
}

function drawOf(
  stores: readonly (readonly number[])[],
  store: number,
  own: readonly (readonly number[])[],
  lot: number,
) {
  const [sprouting, rotting, drying] = [0, 1, 2].map(
    (of) => Math.sqrt(ofTheStore) * stores[of][store] + Math.sqrt(1 - ofTheStore) * own[of][lot],
  );
  return storeDrawOf(sprouting, rotting, drying);
}
