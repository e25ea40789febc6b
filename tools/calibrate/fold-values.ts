import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { PlantValues } from '../../packages/engine/src/index.ts';
import type { Places } from '../score/published-plan.ts';
import { foldCount, foldOf } from './folds.ts';
import { allKnobs, knobName, knobValue, withKnobs } from './knobs.ts';
import { startValues } from './start-values.ts';

/** The ten committed parameter sets: each was fitted without the places of its fold. */
export type FoldFile = { generations: number; seed: number; folds: Record<string, number>[] };

export const foldPath = fileURLToPath(new URL('./fold-values.json', import.meta.url));
/** A set as it is written: the fitted numbers by name. */
export function foldEntry(values: PlantValues): Record<string, number> {
  return Object.fromEntries(allKnobs.map((knob) => [knobName(knob), knobValue(knob, values)]));
}

let sets: PlantValues[] | null = null;

/** Results of all places, each by parameters that have seen nothing of its neighbourhood. */
export function unseenResults<Result>(of: (values: PlantValues, places: Places) => Result[]): Result[] {
  return Array.from({ length: foldCount }, (_, fold) =>
    of(foldSets()[fold], ({ lat, lon }) => foldOf(lat, lon) === fold),
  ).flat();
}

/** Parameters that have seen nothing of a place's neighbourhood. */
export function unseenValues(latitudeDeg: number, longitudeDeg: number): PlantValues {
  return foldSets()[foldOf(latitudeDeg, longitudeDeg)];
}

/** The ten sets, each of its fold. */
export function foldSets(): PlantValues[] {
  sets ??= (JSON.parse(readFileSync(foldPath, 'utf8')) as FoldFile).folds.map((entry) =>
    withKnobs(startValues, allKnobs, (knob) => {
      const value = entry[knobName(knob)];
      if (value === undefined)
        throw new Error(`${foldPath}: no ${knobName(knob)}; run npm run calibrate -- --folds`);
      return value;
    }),
  );
  return sets;
}
