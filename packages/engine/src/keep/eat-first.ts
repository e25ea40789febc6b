import type { StoredNow } from './stored-now.ts';

/** Why a lot comes where it does: necks that never closed, bulbs that are going, or what is over soonest. */
export const eatReasons = ['thick-necks', 'going', 'ends-soonest'] as const;
/** One of {@link eatReasons}. */
export type EatReason = (typeof eatReasons)[number];

/** A lot of the store with why it is eaten in its turn. */
export type Eaten = { plantingId: string; reason: EatReason };

/** A lot with more thick necks, or that loses more in a month, is eaten before any other (common practice, no source). */
const manyThickNecks = 0.2;
const manyGoing = 0.25;

/** In which order to eat what is in store. */
export function eatFirst(
  stored: readonly Pick<StoredNow, 'plantingId' | 'lastsUntil' | 'lostNextShare' | 'thickNeckShare'>[],
): Eaten[] {
  const reasonOf = ({ thickNeckShare, lostNextShare }: (typeof stored)[number]): EatReason =>
    thickNeckShare > manyThickNecks ? 'thick-necks' : lostNextShare > manyGoing ? 'going' : 'ends-soonest';
  return stored
    .map((of) => ({
      plantingId: of.plantingId,
      reason: reasonOf(of),
      // where it lasts beyond all days told, last
      ends: of.lastsUntil.days?.p50 ?? Number.MAX_SAFE_INTEGER,
    }))
    .sort((a, b) => eatReasons.indexOf(a.reason) - eatReasons.indexOf(b.reason) || a.ends - b.ends)
    .map(({ plantingId, reason }) => ({ plantingId, reason }));
}
