import type { FeedProduct } from './feed-product.ts';

/** A day on which a crop may be fed, by the leaves it has; null: before it is in its bed. Days by any count. */
export type FeedChance = { leaves: number | null; day: number };

/** Leaves by which days for feeding are told: Limpopo's guide begins at 2; more than 9 few crops have before bulbs begin. */
export const feedLeaves: readonly number[] = [2, 3, 4, 5, 6, 7, 8, 9];
/** Feeds of a crop: three as in Limpopo's guide; on coarse soils more, of which Georgia's trials ask three at least. */
const mostFeeds = { coarse: 4, other: 3 } as const;
/** Days between two feeds, and until what was strewn is at the roots (common practice, no source). */
const leastDaysApart = 14;
const settlingDays = 7;
/** Less is not worth a walk, g N per m² (common practice, no source). */
const leastFeedG = 2;
/**
 * More of a bag at once burns roots and washes out, g N per m²: 98 g of 10-10-10 is the most that a garden guide prints
 * (Iowa State 2024). What releases slowly is not held to it.
 */
const mostAtOnceG = 9.8;

/** A feed and the nitrogen of it, g per m². */
export type FeedShare = FeedChance & { nitrogenG: number };

/**
 * Nitrogen in equal feeds (as Limpopo's guide prints them, 60 + 60 + 60 kg/ha), spread over the days that will do: all
 * of it in the ground before bulbs begin, and more there at every stage than the crop has taken by then.
 *
 * @param chances in the order of their days
 * @param stop bulbs may begin; null: they don't
 */
export function splitFeeds(
  toGiveG: number,
  product: FeedProduct,
  chances: readonly FeedChance[],
  stop: number | null,
  isOnCoarse: boolean,
): FeedShare[] {
  if (toGiveG <= 0) return [];
  const settling = Math.max(settlingDays, product.leadDays);
  const inTime = chances.filter(
    ({ leaves, day }) => stop === null || day + (leaves === null ? product.leadDays : settling) < stop,
  );
  const most = Math.min(product.mostFeeds, isOnCoarse ? mostFeeds.coarse : mostFeeds.other);
  const days = spreadOut(inTime, Math.min(most, Math.max(1, Math.floor(toGiveG / leastFeedG))));
  const atOnce = product.released < 1 ? Number.POSITIVE_INFINITY : mostAtOnceG;
  return days.map((chance) => ({ ...chance, nitrogenG: Math.min(atOnce, toGiveG / days.length) }));
}

/** Up to so many days, the first one and those nearest to equal steps up to the last. */
function spreadOut(open: readonly FeedChance[], most: number): FeedChance[] {
  if (open.length === 0) return [];
  const chosen = [open[0]];
  const first = open[0].day;
  const span = open[open.length - 1].day - first;
  for (let step = 1; step < most; step++) {
    const ideal = first + (step * span) / (most - 1);
    const before = chosen[chosen.length - 1].day;
    const next = open
      .filter(({ day }) => day >= before + leastDaysApart)
      .sort((a, b) => Math.abs(a.day - ideal) - Math.abs(b.day - ideal));
    if (next.length > 0) chosen.push(next[0]);
  }
  return chosen;
}
