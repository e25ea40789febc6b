import { type PlantValues, randomSource } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import { timingRows, verdictRows } from '../score/timing-rows.ts';
import { boltingLoss } from './bolting-loss.ts';
import { boltingKnobs, type Knob, moved, positionOf, timingKnobs } from './knobs.ts';
import { minimise } from './minimise.ts';
import { timingLoss } from './timing-loss.ts';

type Stage = { name: string; knobs: readonly Knob[]; before: number; after: number };
export type Fit = { values: PlantValues; stages: Stage[] };

/** Dates first, then bolting with the dates held: what a plant is when cold comes hangs on how it grows. */
export function fitPlant(
  rows: readonly CalendarRow[],
  from: PlantValues,
  { generations, seed }: { generations: number; seed: number },
): Fit {
  const timed = timingRows(rows);
  const judged = verdictRows(rows);
  const random = randomSource(seed);
  let values = from;
  const stages: Stage[] = [];
  const run = (name: string, knobs: readonly Knob[], lossOf: (values: PlantValues) => number) => {
    const base = values;
    const before = lossOf(base);
    const found = minimise((at) => lossOf(moved(base, knobs, at)), positionOf(knobs, base), {
      generations,
      random,
    });
    if (found.loss < before) values = moved(base, knobs, found.at);
    stages.push({ name, knobs, before, after: Math.min(before, found.loss) });
  };
  run('timing', timingKnobs, (of) => timingLoss(timed, of));
  run('bolting', boltingKnobs, (of) => boltingLoss(judged, of));
  return { values, stages };
}
