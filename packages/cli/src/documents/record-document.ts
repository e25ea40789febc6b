import type { GardenPlanting, Observation, OddCode } from '@neckfall/engine';
import { version } from '../version.ts';
import type { RecordDocument } from './record-schema.ts';

/** What a garden file holds of a planting, and what was noted last. */
export type Held = {
  file: string;
  planting: GardenPlanting;
  /** By date. */
  held: readonly Observation[];
  recorded: Observation;
};

export function recordDocument({
  file,
  planting: { id, name },
  held,
  recorded,
  questions,
  warnings,
}: Held & {
  questions: { code: OddCode; sentence: string }[];
  warnings: string[];
}): RecordDocument {
  return {
    schema: 'neckfall/record@1',
    engine: version,
    place: null,
    assumed: [],
    warnings,
    sources: [],
    file,
    planting: { id, name },
    recorded: recorded.id,
    questions,
    observations: [...held],
  };
}
