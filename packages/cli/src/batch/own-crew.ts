import { answerRows } from './answer-rows.ts';
import type { Crew } from './crew.ts';
import { type BatchJob, lineMaker } from './line-maker.ts';

/** Answers rows in this very thread. */
export function ownCrew(job: BatchJob): Crew {
  const lineOf = lineMaker(job);
  return {
    hands: 1,
    answer: async (rows) => answerRows(rows, lineOf),
    dismiss: async () => {},
  };
}
