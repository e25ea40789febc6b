import { keepingCurve, lastsDay, type StoredLot } from './keeping.ts';
import type { StoreClimate } from './store-climate.ts';
import { noStoreDraw } from './store-draw.ts';

/** Bulbs that do not dry here under a roof are taken in by then: they dry off in 2–4 weeks (Kansas extension), days. */
export const takenInAfter = 28;

/** Of the time that a lot usually lasts, when it is looked through: so spread, looks teach most (docs/validation.md, "Looks at the store"). */
const lookShares = [0.25, 0.5, 0.75] as const;

/** A look through the store, by days since lifting. */
export type StoreLook = {
  /** Which of the looks of a lot, from 1 on; it stays where earlier ones fall away. */
  number: number;
  after: number;
  isDone: boolean;
};

/**
 * When a lot is to be looked through, by how long it usually lasts in its store; what is over while it dries is not.
 *
 * @param liftedAt the climate day of lifting
 * @param looked days since lifting of the looks that were noted
 * @returns with `lasts`, the days until fewer than half are sound
 */
export function storeLooks(
  lot: StoredLot,
  store: StoreClimate,
  liftedAt: number,
  looked: readonly number[],
): { lasts: number; looks: StoreLook[] } {
  const lasts = lastsDay(keepingCurve(lot, store, liftedAt, noStoreDraw));
  const [first] = lookShares;
  const looks = lookShares
    .map((share, at) => {
      const after = Math.round(share * lasts);
      // one is done by what was noted nearer to it than to the next
      const isDone = looked.some((day) => Math.abs(day - after) <= (first * lasts) / 2);
      return { number: at + 1, after, isDone };
    })
    .filter(({ after }) => after > takenInAfter);
  return { lasts, looks };
}
