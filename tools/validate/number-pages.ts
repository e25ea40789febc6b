import { boltingLoss } from '../calibrate/bolting-loss.ts';
import { growthLoss, type StageName, stageKnobs, stageNames } from '../calibrate/fit-plant.ts';
import { foldSets } from '../calibrate/fold-values.ts';
import { foldOf } from '../calibrate/folds.ts';
import { type Knob, knobName, knobValue, withKnobs } from '../calibrate/knobs.ts';
import { startValues } from '../calibrate/start-values.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import type { Places } from '../score/published-plan.ts';
import { verdictRows } from '../score/timing-rows.ts';
import { table } from './table.ts';

/** Loss of each fold's numbers on the places they never saw, in the mean of the folds; with `back`, that one as at the start. */
function unseenLoss(rows: readonly CalendarRow[], stage: StageName, back: Knob | null): number {
  const losses = foldSets().map((fitted, fold) => {
    const values = back ? withKnobs(fitted, [back], (knob) => knobValue(knob, startValues)) : fitted;
    const isIn = (latitudeDeg: number, longitudeDeg: number) => foldOf(latitudeDeg, longitudeDeg) === fold;
    const of = rows.filter((row) => isIn(row.latitudeDeg, row.longitudeDeg));
    const places: Places = ({ lat, lon }) => isIn(lat, lon);
    return stage === 'growth' ? growthLoss(of, values, places) : boltingLoss(verdictRows(of), values, places);
  });
  return losses.reduce((a, b) => a + b) / losses.length;
}

/** What each fitted number buys on places left out. */
export function numberPages(rows: readonly CalendarRow[]): string {
  const all = stageNames.flatMap((stage) => {
    const whole = unseenLoss(rows, stage, null);
    return stageKnobs[stage].map((knob) => {
      const without = unseenLoss(rows, stage, knob);
      const start = knobValue(knob, startValues);
      return [
        stage,
        knobName(knob),
        String(start),
        whole.toFixed(2),
        `${without < whole ? '−' : '+'}${Math.abs(without - whole).toFixed(2)}`,
      ];
    });
  });
  return `## What each fitted number buys

${all.length} numbers are fitted. Each is put back to where every fit begins (tools/calibrate/start-values.ts), in all ten sets and
with the others left as they were fitted, and judged on the places that the set has not seen. What rises pays for its number there;
what falls or stays does not, or another number makes up for it.

${table(['stage', 'number', 'start', 'loss left out', 'put back'], all)}
`;
}
