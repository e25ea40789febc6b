import { type FeedAnswer, feedOf, type Ground, type Plan } from '@neckfall/engine';
import { type CropUnderWayAsked, tendedCrop } from './crop-under-way.ts';

export type FeedAheadAsked = CropUnderWayAsked & { ground: Ground };

export type FeedAhead = { feed: FeedAnswer; plan: Plan };

/** How the crop is to be fed, over what its bed gives and what it was fed so far. */
export function feedAhead(asked: FeedAheadAsked): FeedAhead {
  const crop = tendedCrop(asked);
  return { feed: feedOf(crop), plan: crop.plan };
}
