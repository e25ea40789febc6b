import type { PlantValues } from '../../packages/engine/src/index.ts';
import { type BoltingCase, boltingCases } from '../calibrate/bolting-cases.ts';
import { unseenResults } from '../calibrate/fold-values.ts';
import { type PairResult, pairResults } from '../score/bolting-pairs.ts';
import { type DatedError, datedErrors } from '../score/dated-cases.ts';
import { type HardTest, hardTests } from '../score/hard-tests.ts';
import { practiceTests } from '../score/practice.ts';
import type { PracticeTest } from '../score/practice-check.ts';
import { answeredOf } from '../score/published-plan.ts';
import { type SetResult, sapporoResults } from '../score/set-trial.ts';
import { type SizeResult, sizeResults } from '../score/size-scores.ts';
import { missesOfStory, readStories, tellStory } from '../score/stories.ts';

/** What is checked beside the calendars, under the values in use. */
export type CropChecks = {
  sizes: SizeResult[];
  /** The same trials under values that never saw their neighbourhood. */
  unseenSizes: SizeResult[];
  sets: SetResult[];
  dated: DatedError[];
  unseenDated: DatedError[];
  shares: { of: BoltingCase; predicted: number }[];
  pairs: PairResult[];
  hardTests: HardTest[];
  practice: PracticeTest[];
  stories: { id: string; misses: string[] }[];
};

export function cropChecks(values: PlantValues): CropChecks {
  return {
    sizes: sizeResults(values),
    unseenSizes: unseenResults((unseen, places) => sizeResults(unseen, places)),
    sets: sapporoResults(values),
    dated: datedErrors(values),
    unseenDated: unseenResults(datedErrors),
    shares: boltingCases.map((of) => ({ of, predicted: answeredOf(of, values).boltedShare })),
    pairs: pairResults(values),
    hardTests: hardTests(values),
    practice: practiceTests(values),
    stories: readStories().map((story) => ({
      id: story.id,
      misses: missesOfStory(story, tellStory(story, values)),
    })),
  };
}
