import type { DayRow, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { cropFactsOf } from './crop-facts.ts';
import { cropSaid } from './crop-said.ts';
import type { CropLine, WorkMark } from './year-line-props.ts';

/** Green leaves counted on a day. */
export type LeafCount = { day: number; leaves: number };

/** A crop for the year line, from what many years say (dates) and the median season's days (steps). */
export function cropLineOf(
  summary: SeasonSummary,
  rows: readonly DayRow[],
  speaker: Speaker,
  counts: readonly LeafCount[] = [],
  work: readonly WorkMark[] = [],
): CropLine {
  const counted = counts.flatMap((count) => countedOf(count, rows, speaker) ?? []);
  return cropSaid(cropFactsOf(summary, rows), speaker, { counted, work });
}

/** Leaves that have withered by then are no longer counted, and stay in the steps. */
function countedOf({ day, leaves }: LeafCount, rows: readonly DayRow[], speaker: Speaker) {
  const row = rows.find((row) => row.day === day);
  if (!row) return null;
  const text = speaker.say('app.seen.mark', {
    date: speaker.day(day),
    count: leaves,
    value: speaker.number(leaves, 1),
  });
  return { day, made: leaves + row.leavesMade - row.leavesGreen, text };
}
