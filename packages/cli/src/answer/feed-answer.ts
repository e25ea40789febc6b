import { feedAssumptions, feedSources, practiceAssumptions } from '@neckfall/answers';
import { feedOf } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { feedDocument, feedRowsOf } from '../documents/feed-document.ts';
import { type RawFeedOptions, readFeedOptions } from '../options/feed-options.ts';
import { csv } from '../output/csv.ts';
import { feedText } from '../text/feed-text.ts';
import type { Answer } from './answer.ts';
import { type RawTended, tended } from './tended.ts';

export type RawFeed = RawTended & RawFeedOptions;

/** How a crop is to be fed. @param target a garden file with `--planting`, else a place */
export function feedAnswer(target: string | undefined, raw: RawFeed, speaker: Speaker): Answer {
  const { ground, aimKgPerM2, texture } = readFeedOptions(raw, speaker);
  const { soil: _, ...rest } = raw;
  const found = tended(target, texture === undefined ? rest : { ...rest, soil: texture }, speaker);
  const { frame } = found;
  const crop = { ...found.crop, ground: { ...found.crop.ground, ...ground } };
  const feed = feedOf(crop, { aimKgPerM2 });
  frame.assumed.push(
    ...practiceAssumptions(crop.summary.plan, speaker),
    ...feedAssumptions(feed, crop.ground.fertility !== null, speaker),
  );
  frame.sources.push(...feedSources(speaker));
  const told = { ...found, crop, feed };
  return {
    text: () => feedText(told),
    json: () => feedDocument(told),
    csv: () => csv(feedRowsOf(feed)),
    warnings: frame.warnings,
  };
}
