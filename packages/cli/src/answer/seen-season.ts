import { seenSentences } from '@neckfall/answers';
import type { LearntSeason, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type LearntDocument, learntDocument } from '../documents/learnt-document.ts';

/** What was seen of a crop, told beside its season. */
export type SeenSeason = {
  sentences(now: SeasonSummary): string[];
  document(now: SeasonSummary): LearntDocument;
};

/** @param expected the season in the same weather before anything was seen */
export function seenSeason(
  learnt: LearntSeason,
  expected: SeasonSummary,
  hasEarlier: boolean,
  speaker: Speaker,
): SeenSeason {
  return {
    sentences: (now) => seenSentences(learnt, now, expected, hasEarlier, speaker),
    document: (now) => learntDocument(learnt, now.needPhotoperiodH, speaker),
  };
}
