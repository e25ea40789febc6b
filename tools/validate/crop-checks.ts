import type { PlantValues } from '../../packages/engine/src/index.ts';
import { type BoltingCase, boltingCases } from '../calibrate/bolting-cases.ts';
import { type PairResult, pairResults } from '../score/bolting-pairs.ts';
import { type DensityFit, densityFit } from '../score/density-trials.ts';
import { type HardTest, hardTests } from '../score/hard-tests.ts';
import { type OnsetCase, onsetErrors } from '../score/onset-cases.ts';
import { meanSeasonOf } from '../score/published-plan.ts';
import { type SetResult, sapporoResults } from '../score/set-trial.ts';
import { missesOfStory, readStories, tellStory } from '../score/stories.ts';

/** What is checked beside the calendars, under the values in use. */
export type CropChecks = {
  densities: DensityFit[];
  sets: SetResult[];
  onsets: { of: OnsetCase; days: number | null }[];
  shares: { of: BoltingCase; predicted: number }[];
  pairs: PairResult[];
  hardTests: HardTest[];
  stories: { id: string; misses: string[] }[];
};

export function cropChecks(values: PlantValues): CropChecks {
  return {
    densities: densityFit(values),
    sets: sapporoResults(values),
    onsets: onsetErrors(values),
    shares: boltingCases.map((of) => ({ of, predicted: meanSeasonOf(of, values).outcome.boltedShare })),
    pairs: pairResults(values),
    hardTests: hardTests(values),
    stories: readStories().map((story) => ({
      id: story.id,
      misses: missesOfStory(story, tellStory(story, values)),
    })),
  };
}
