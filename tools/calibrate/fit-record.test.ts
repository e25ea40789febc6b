import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { defaultPlantValues, type PlantValues } from '../../packages/engine/src/index.ts';
import { readCalendarRows } from '../score/calendar-rows.ts';
import { everywhere } from '../score/published-plan.ts';
import { verdictRows } from '../score/timing-rows.ts';
import { boltingLoss } from './bolting-loss.ts';
import { growthLoss, type StageName, stageKnobs, stageNames } from './fit-plant.ts';
import { readRecord } from './fit-record.ts';
import { knobName, withKnobs } from './knobs.ts';
import { startValues } from './start-values.ts';

const shared = process.env.NECKFALL_SHARED ? join(process.env.NECKFALL_SHARED, 'data', 'calendars.json') : '';

/** Values after the stages named, as the record has them. */
function recorded(stages: readonly StageName[]): PlantValues {
  const record = readRecord();
  return stages.reduce((values, name) => {
    const stage = record.stages.find((of) => of.name === name)!;
    const fitted = new Map(stage.knobs.map((knob) => [knob.name, knob.value]));
    return withKnobs(values, stageKnobs[name], (knob) => fitted.get(knobName(knob)) ?? Number.NaN);
  }, startValues);
}

describe('the record of the fit', () => {
  it('has the values in use', () => expect(recorded(stageNames)).toEqual(defaultPlantValues));

  // What a change of the model or its prices after the fit would break, and with it that the fit can be repeated.
  it.skipIf(!existsSync(shared))('has the losses that its values have (needs NECKFALL_SHARED)', () => {
    const rows = readCalendarRows(shared);
    const judged = verdictRows(rows);
    const grown = recorded(['growth']);
    const found = [
      { before: growthLoss(rows, startValues, everywhere), after: growthLoss(rows, grown, everywhere) },
      {
        before: boltingLoss(judged, grown, everywhere),
        after: boltingLoss(judged, recorded(stageNames), everywhere),
      },
    ];
    for (const [at, stage] of readRecord().stages.entries()) {
      expect(found[at].before).toBeCloseTo(stage.before, 3);
      expect(found[at].after).toBeCloseTo(stage.after, 3);
    }
  });
});
