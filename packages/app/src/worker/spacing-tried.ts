import type { SeasonSummary } from '@neckfall/engine';
import { type CropUnderWayAsked, cropUnderWay } from './crop-under-way.ts';
import type { Work } from './protocol.ts';

type SpacingTriedAsked = CropUnderWayAsked & { densities: readonly number[] };

/** What the seasons of one crop come to at each of some densities, each as the Season page has it. */
export async function spacingTried(
  { densities, ...asked }: SpacingTriedAsked,
  work: Work,
): Promise<SeasonSummary[]> {
  const summaries: SeasonSummary[] = [];
  for (const densityPerM2 of densities) {
    // a distance being typed overtakes the one before
    await work.pause();
    const { summary } = cropUnderWay({ ...asked, options: { ...asked.options, densityPerM2 } });
    summaries.push(summary);
  }
  return summaries;
}
