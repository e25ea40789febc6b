import { type PlantValues, randomSource } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import { everywhere, type Places } from '../score/published-plan.ts';
import { timingRows, verdictRows } from '../score/timing-rows.ts';
import { boltingLoss } from './bolting-loss.ts';
import { dateParts, sizeParts } from './crop-loss.ts';
import { boltingKnobs, type Knob, moved, positionOf, sizeKnobs, timingKnobs } from './knobs.ts';
import { minimise } from './minimise.ts';
import { timingLoss } from './timing-loss.ts';

export const stageNames = ['dates', 'sizes', 'bolting'] as const;
export type StageName = (typeof stageNames)[number];

/** What each stage moves. */
export const stageKnobs: Readonly<Record<StageName, readonly Knob[]>> = {
  dates: timingKnobs,
  sizes: sizeKnobs,
  bolting: boltingKnobs,
};

type Stage = {
  name: StageName;
  knobs: readonly Knob[];
  before: number;
  after: number;
  lossOf: (values: PlantValues) => number;
};
export type Fit = { values: PlantValues; stages: Stage[] };

/** What the first stage makes small: dates of calendars, then onsets, stories and the ripeness of sets. */
function dateLoss(rows: readonly CalendarRow[], values: PlantValues, places: Places): number {
  const { onsets, stories, setDays } = dateParts(values, places);
  return timingLoss(timingRows(rows), values) + onsets + stories + setDays;
}

/** What the second stage makes small: sizes of calendars, densities and sets; dates may not suffer. */
function sizeLoss(rows: readonly CalendarRow[], values: PlantValues, places: Places): number {
  const { size, density, sets } = sizeParts(verdictRows(rows), values, places);
  return size + density + sets + dateLoss(rows, values, places);
}

/**
 * Dates first, then sizes, then bolting, each with what came before held: what a plant is when cold comes hangs on how
 * it grows. Everything is run in the mean climate.
 *
 * @param only one stage alone, the rest as in `from`
 */
export function fitPlant(
  rows: readonly CalendarRow[],
  from: PlantValues,
  {
    generations,
    seed,
    places = everywhere,
    only = null,
  }: { generations: number; seed: number; places?: Places; only?: StageName | null },
): Fit {
  const judged = verdictRows(rows);
  const random = randomSource(seed);
  let values = from;
  const stages: Stage[] = [];
  const run = (name: StageName, share: number, lossOf: (values: PlantValues) => number) => {
    if (only !== null && only !== name) return;
    const knobs = stageKnobs[name];
    const base = values;
    const before = lossOf(base);
    const found = minimise((at) => lossOf(moved(base, knobs, at)), positionOf(knobs, base), {
      generations: Math.ceil(share * generations),
      random,
    });
    if (found.loss < before) values = moved(base, knobs, found.at);
    stages.push({ name, knobs, before, after: Math.min(before, found.loss), lossOf });
  };
  run('dates', 1, (of) => dateLoss(rows, of, places));
  run('sizes', 0.5, (of) => sizeLoss(rows, of, places));
  run('bolting', 0.9, (of) => boltingLoss(judged, of, places));
  return { values, stages };
}
