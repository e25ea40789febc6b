import { type PlantValues, randomSource } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import { everywhere, type Places } from '../score/published-plan.ts';
import { fitYears, scoreYears, useYears } from '../score/sites.ts';
import { timingRows, verdictRows } from '../score/timing-rows.ts';
import { boltingLoss } from './bolting-loss.ts';
import { dateLoss } from './date-loss.ts';
import { boltingKnobs, growthKnobs, type Knob, moved, positionOf } from './knobs.ts';
import { type Minimum, minimise } from './minimise.ts';
import { roomLoss } from './room-loss.ts';
import { sizeLoss } from './size-loss.ts';

export const stageNames = ['growth', 'bolting'] as const;
export type StageName = (typeof stageNames)[number];

/** What each stage moves. */
export const stageKnobs: Readonly<Record<StageName, readonly Knob[]>> = {
  growth: growthKnobs,
  bolting: boltingKnobs,
};

/**
 * Searches that follow each other, each from the best so far: first step in widths of the bounds, share of the
 * generations, and weather years. The losses are rough, being of medians in whole days: one search alone ends up to 0.6
 * above another, and a fit to twelve years alone fits those twelve, 0.4 to 2.3 better than thirty.
 */
const searches = [
  { step: 0.15, share: 0.36, years: fitYears },
  { step: 0.1, share: 0.36, years: fitYears },
  { step: 0.07, share: 0.28, years: scoreYears },
] as const;

type Stage = {
  name: StageName;
  knobs: readonly Knob[];
  before: number;
  after: number;
  lossOf: (values: PlantValues) => number;
};
export type Fit = { values: PlantValues; stages: Stage[] };

/** What the first stage makes small: misses of dates and sizes, and what growth rooms and practice rule out. */
export function growthLoss(rows: readonly CalendarRow[], values: PlantValues, places: Places): number {
  return (
    dateLoss(timingRows(rows), values, places) +
    sizeLoss(verdictRows(rows), values, places) +
    roomLoss(values)
  );
}

/**
 * Dates and sizes first, then bolting with these held: what a plant is when cold comes hangs on how it grows. What is
 * compared is what is answered: medians over weather years and draws of the kind.
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
    const lossAt = (at: readonly number[]) => lossOf(moved(base, knobs, at));
    let found: Minimum = { at: positionOf(knobs, base), loss: before };
    for (const search of searches) {
      useYears(search.years);
      found = minimise(lossAt, found.at, {
        generations: Math.ceil(share * search.share * generations),
        random,
        step: search.step,
      });
    }
    if (found.loss < before) values = moved(base, knobs, found.at);
    stages.push({ name, knobs, before, after: Math.min(before, found.loss), lossOf });
  };
  useYears(scoreYears);
  run('growth', 1, (of) => growthLoss(rows, of, places));
  run('bolting', 0.6, (of) => boltingLoss(judged, of, places));
  return { values, stages };
}
