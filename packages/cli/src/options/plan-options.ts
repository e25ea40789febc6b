import {
  densityRange,
  formatDay,
  gardenRanges,
  longestNurseryDays,
  type Plan,
  planDefaults,
  planWords,
  type StartMethod,
  soilTextures,
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
export type Practice = Omit<Plan, 'type' | 'traits' | 'startDay' | 'plantOutDay' | 'sunHours'>;

type Rule = { option: keyof RawPlanOptions; flag: string; start: StartMethod; why: MessageKey };

const startRules: readonly Rule[] = [
  { option: 'plantOut', flag: '--plant-out', start: 'raised-seedlings', why: 'why.plant-out-only-raised' },
  { option: 'lampHours', flag: '--lamp-hours', start: 'raised-seedlings', why: 'why.lamp-hours-only-raised' },
  {
    option: 'nurseryTemp',
    flag: '--nursery-temp',
    start: 'raised-seedlings',
    why: 'why.nursery-temp-only-raised',
  },
  { option: 'setSize', flag: '--set-size', start: 'sets', why: 'why.set-size-only-sets' },
  { option: 'setStore', flag: '--set-store', start: 'sets', why: 'why.set-store-only-sets' },
];

export function readPractice(raw: RawPlanOptions, speaker: Speaker): Practice {
  if (raw.start === undefined) throw missing('--start', startMethods, speaker);
  const start = parseChoice(raw.start, '--start', startMethods, speaker);
  for (const rule of startRules) {
    if (raw[rule.option] !== undefined && rule.start !== start) {
      const why = speaker.say(rule.why);
      throw refuse('contradiction', { field: rule.flag, values: { other: `--start ${start}`, why } });
    }
  }
  return { start, ...readGrowing(raw, speaker) };
}

/** How a crop is grown, whatever its start. */
export function readGrowing(raw: RawPlanOptions, speaker: Speaker): Omit<Practice, 'start'> {
  const d = planDefaults;
  return {
    densityPerM2: optionalNumber(raw.density, '--density', ...densityRange, 'per m²') ?? d.densityPerM2,
    setSizeMm: optionalNumber(raw.setSize, '--set-size', ...gardenRanges.setSizeMm, 'mm') ?? d.setSizeMm,
    setStore: optionalChoice(raw.setStore, '--set-store', planWords.setStore, speaker) ?? d.setStore,
    cover: optionalChoice(raw.cover, '--cover', planWords.cover, speaker) ?? d.cover,
    water: optionalChoice(raw.water, '--water', planWords.water, speaker) ?? d.water,
    soil: optionalChoice(raw.soil, '--soil', soilTextures, speaker) ?? d.soil,
    nurseryTempC:
      optionalNumber(raw.nurseryTemp, '--nursery-temp', ...gardenRanges.nurseryTempC, '°C') ?? d.nurseryTempC,
    lampHours: optionalNumber(raw.lampHours, '--lamp-hours', ...gardenRanges.lampHours, 'h') ?? d.lampHours,
  };
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

function readPlantOut(text: string, startDay: number): number {
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

function optionalNumber(text: string | undefined, field: string, min: number, max: number, unit: string) {
  return text === undefined ? null : parseNumber(text, { field, min, max, unit });
}

function optionalChoice<Choice extends string>(
  text: string | undefined,
  field: string,
  choices: readonly Choice[],
  speaker: Speaker,
): Choice | null {
  return text === undefined ? null : parseChoice(text, field, choices, speaker);
}

function missing(field: string, choices: readonly string[], { any }: Speaker) {
  return refuse('missing-option', { field, expected: any(choices) });
}
