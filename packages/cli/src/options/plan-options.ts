import {
  formatDay,
  longestNurseryDays,
  type PlanForm,
  type PlanWithout,
  planDefaults,
  planFields,
  type StartMethod,
  startMethods,
} from '@neckfall/engine';
import type { MessageKey, Speaker } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';
import { parseChoice } from '../values/choice.ts';
import { dateLimits, parseDate } from '../values/date.ts';
import { parseNumber } from '../values/number.ts';
import type { RawOnionOptions } from './onion-options.ts';
import type { PlaceOptions } from './place-options.ts';

/** Plan options as commander gives them. */
export type RawPlanOptions = RawOnionOptions & {
  start?: string;
  date?: string;
  plantOut?: string;
  nurseryTemp?: string;
  lampHours?: string;
  density?: string;
  setSize?: string;
  setStore?: string;
  cover?: string;
  water?: string;
  soil?: string;
};

/** A plan without its day and type: what `when` tries on every week of the year. */
export type Practice = PlanWithout<'type' | 'traits' | 'startDay' | 'plantOutDay' | 'sunHours'>;

/** Every field with an option of its own. */
type Growing = Pick<PlanForm, keyof typeof planFields>;

type Field = keyof typeof planFields;
const fields = Object.keys(planFields) as Field[];

/** The option of each field, as commander calls it: `--set-size` is `setSize`. */
export const optionOf = {
  densityPerM2: 'density',
  setSizeMm: 'setSize',
  setStore: 'setStore',
  cover: 'cover',
  water: 'water',
  soil: 'soil',
  nurseryTempC: 'nurseryTemp',
  lampHours: 'lampHours',
} as const satisfies Record<Field, keyof RawPlanOptions>;

type Rule = { option: keyof RawPlanOptions; name: string; start: StartMethod };

/** Options that have a part in one way of starting alone. */
const startRules: readonly Rule[] = [
  { option: 'plantOut', name: 'plant-out', start: 'raised-seedlings' },
  ...fields.flatMap((field): Rule[] => {
    const { name, only } = planFields[field];
    return only === null ? [] : [{ option: optionOf[field], name, start: only }];
  }),
];

/** The way of starting that an option which has a part in no other tells; undefined where none does. */
export function startToldBy(raw: RawPlanOptions): StartMethod | undefined {
  return startRules.find(({ option }) => raw[option] !== undefined)?.start;
}

export function readPractice(raw: RawPlanOptions, speaker: Speaker): Practice {
  if (raw.start === undefined) throw missing('--start', startMethods, speaker);
  const start = readStart(raw.start, speaker);
  for (const rule of startRules) {
    if (raw[rule.option] !== undefined && rule.start !== start) {
      const why = speaker.say(`clash.${rule.name}-only-here` as MessageKey);
      throw refuse('contradiction', { field: `--${rule.name}`, values: { other: `--start ${start}`, why } });
    }
  }
  return { start, ...readGrowing(raw, speaker) };
}

export function readStart(text: string, speaker: Speaker): StartMethod {
  return parseChoice(text, '--start', startMethods, speaker);
}

/** How a crop is grown, whatever its start. */
export function readGrowing(raw: RawPlanOptions, speaker: Speaker): Growing {
  const read = (field: Field) => {
    const text = raw[optionOf[field]];
    if (text === undefined) return planDefaults[field];
    const of = planFields[field];
    const flag = `--${of.name}`;
    if ('words' in of) return parseChoice<string>(text, flag, of.words, speaker);
    const [min, max] = of.range;
    return parseNumber(text, { field: flag, min, max, unit: of.unit });
  };
  // each field is read by its own words or range
  return Object.fromEntries(fields.map((field) => [field, read(field)])) as Growing;
}

/** Without the options that have no part in a way of starting. */
export function withoutOthers<Raw extends RawPlanOptions>(raw: Raw, start: string | undefined): Raw {
  const kept = { ...raw };
  for (const rule of startRules) if (rule.start !== start?.trim().toLowerCase()) delete kept[rule.option];
  return kept;
}

/** The days of a plan; `plantOutDay` null leaves the day to the plants. */
export function readDays(
  raw: RawPlanOptions,
  { today, weather }: Pick<PlaceOptions, 'today' | 'weather'>,
): { startDay: number; plantOutDay: number | null } {
  if (raw.date === undefined) throw refuse('missing-option', { field: '--date', expected: '--date MM-DD' });
  const startDay = parseDate(raw.date, '--date', today, dateLimits(today, weather?.record ?? null));
  return {
    startDay,
    plantOutDay: raw.plantOut === undefined ? null : readPlantOut(raw.plantOut, startDay),
  };
}

export function readPlantOut(text: string, startDay: number): number {
  const field = '--plant-out';
  const day = parseDate(text, field, startDay, null);
  const values = { value: text, start: formatDay(startDay) };
  if (day <= startDay) throw refuse('plant-out-before-start', { field, values });
  const latest = startDay + longestNurseryDays;
  if (day > latest) {
    throw refuse('plant-out-too-late', {
      field,
      values: { ...values, limit: longestNurseryDays, latest: formatDay(latest) },
    });
  }
  return day;
}

function missing(field: string, choices: readonly string[], { any }: Speaker) {
  return refuse('missing-option', { field, expected: any(choices) });
}
