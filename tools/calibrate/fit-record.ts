import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { PlantValues } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import { type Fit, stageNames } from './fit-plant.ts';
import { type Knob, knobName, knobValue, withKnobs } from './knobs.ts';
import { startValues } from './start-values.ts';

/** What a fit did, kept beside the values it gave. */
export type FitRecord = { stages: StageRecord[] };

type StageRecord = {
  name: string;
  generations: number;
  seed: number;
  rows: number;
  before: number;
  after: number;
  knobs: KnobRecord[];
};

type KnobRecord = {
  name: string;
  start: number;
  value: number;
  low: number;
  high: number;
  /** What the stage's loss rises, at most, when the value moves a tenth of its bounds either way. */
  sensitivity: number;
};

export const recordPath = fileURLToPath(new URL('./fit-record.json', import.meta.url));

export function readRecord(): FitRecord {
  return JSON.parse(readFileSync(recordPath, 'utf8')) as FitRecord;
}

export function recordOf(
  fit: Fit,
  rows: readonly CalendarRow[],
  { generations, seed }: { generations: number; seed: number },
): FitRecord {
  return {
    stages: fit.stages.map(({ name, before, after, knobs, lossOf }) => ({
      name,
      generations,
      seed,
      rows: rows.length,
      before: round(before),
      after: round(after),
      knobs: knobs.map((knob) => ({
        name: knobName(knob),
        start: knobValue(knob, startValues),
        value: knobValue(knob, fit.values),
        low: knob.low,
        high: knob.high,
        sensitivity: round(sensitivityOf(knob, fit.values, lossOf)),
      })),
    })),
  };
}

/** A record with newly fitted stages in place of their former ones; stages that are no more are forgotten. */
export function withStages(record: FitRecord, { stages }: FitRecord): FitRecord {
  const known = new Map([...record.stages, ...stages].map((stage) => [stage.name, stage]));
  return { stages: stageNames.flatMap((name) => known.get(name) ?? []) };
}

function sensitivityOf(knob: Knob, values: PlantValues, lossOf: (values: PlantValues) => number): number {
  const here = lossOf(values);
  const step = 0.1 * (knob.high - knob.low);
  const at = [-step, step].map((off) =>
    Math.min(knob.high, Math.max(knob.low, knobValue(knob, values) + off)),
  );
  return Math.max(...at.map((value) => lossOf(withKnobs(values, [knob], () => value)) - here));
}

const round = (n: number) => Math.round(1e4 * n) / 1e4;
