import {
  civilDate,
  dayNumber,
  formatDay,
  gallonsToLitres,
  gardenRanges,
  inchesToMm,
  isFeed,
  longestNote,
  type Observation,
  type ObservedNumber,
  ouncesToGrams,
  poundsToKg,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';
import { today as machineToday } from '../values/clock.ts';
import { parseDate, parseToday } from '../values/date.ts';
import { parseNumber } from '../values/number.ts';

/** What may be noted of a planting: each option with the field that it fills. */
const numbers = {
  leaves: { field: 'leavesGreen' },
  neck: { field: 'neckMm', kind: 'length' },
  bulb: { field: 'bulbMm', kind: 'length' },
  stand: { field: 'standCount', whole: true },
  flowering: { field: 'floweringCount', whole: true },
  topsOver: { field: 'topsOverShare' },
  lookedAt: { field: 'lookedAt', whole: true },
  watered: { field: 'wateredLitres', kind: 'water' },
  weighed: { field: 'weighedKg', kind: 'crop' },
  count: { field: 'bulbCount', whole: true },
  thickNecks: { field: 'thickNeckCount', whole: true },
  sound: { field: 'soundCount', whole: true },
  sprouted: { field: 'sproutedCount', whole: true },
  rotten: { field: 'rottenCount', whole: true },
} as const satisfies Record<string, { field: ObservedNumber; kind?: Kind; whole?: boolean }>;

type NumberOption = keyof typeof numbers;
type Kind = 'length' | 'water' | 'feed' | 'crop';

/** SI of one unit, and decimals that are kept. */
const units: Record<'metric' | 'us', Record<Kind, { unit: string; si: number; digits: number }>> = {
  metric: {
    length: { unit: 'mm', si: 1, digits: 2 },
    water: { unit: 'l', si: 1, digits: 2 },
    feed: { unit: 'g', si: 1, digits: 1 },
    crop: { unit: 'kg', si: 1, digits: 3 },
  },
  us: {
    length: { unit: 'in', si: inchesToMm(1), digits: 2 },
    water: { unit: 'gal', si: gallonsToLitres(1), digits: 2 },
    feed: { unit: 'oz', si: ouncesToGrams(1), digits: 1 },
    crop: { unit: 'lb', si: poundsToKg(1), digits: 3 },
  },
};

export type RawRecord = { [Option in NumberOption]?: string } & {
  planting?: string;
  date?: string;
  fed?: string;
  lifted?: boolean;
  note?: string;
  today?: string;
};

/** What was seen on a day, without the planting it was seen of; all in SI whatever it was given in. */
export type Seen = Pick<Observation, 'date'> &
  Partial<Pick<Observation, ObservedNumber | 'fedProduct' | 'lifted' | 'note'>>;

export function readRecordOptions(raw: RawRecord, { units: system }: Speaker): { seen: Seen; today: number } {
  const today = raw.today === undefined ? machineToday() : parseToday(raw.today);
  const seen: Record<string, unknown> = {};
  for (const option of Object.keys(numbers) as NumberOption[]) {
    const text = raw[option];
    const { field, ...rule }: { field: ObservedNumber; kind?: Kind; whole?: boolean } = numbers[option];
    if (text !== undefined) seen[field] = numberOf(text, flagOf(option), field, rule, system);
  }
  if (raw.fed !== undefined) Object.assign(seen, feedOf(raw.fed, system));
  if (raw.lifted) seen.lifted = true;
  if (raw.note !== undefined && raw.note.trim() !== '') seen.note = noteOf(raw.note);
  // how many were looked at says nothing by itself
  if (Object.keys(seen).every((field) => field === 'lookedAt')) throw refuse('record-nothing');
  return { seen: { date: formatDay(dayOf(raw.date, today)), ...seen }, today };
}

function numberOf(
  text: string,
  flag: string,
  field: ObservedNumber,
  { kind, whole = false }: { kind?: Kind; whole?: boolean },
  system: Speaker['units'],
): number {
  const { unit, si, digits } = kind ? units[system][kind] : { unit: undefined, si: 1, digits: 3 };
  const [min, max] = gardenRanges[field];
  const most = Math.floor((max / si) * 100) / 100;
  const value = parseNumber(text, { field: flag, min, max: most, whole, ...(unit && { unit }) });
  return Number((value * si).toFixed(digits));
}

/** `10-4-8:200`: what the packet says, and the weight that was given. */
function feedOf(text: string, system: Speaker['units']): Pick<Observation, 'fedProduct' | 'fedG'> {
  const { unit } = units[system].feed;
  const [, product, weight] = /^\s*([\d.-]+)\s*:(.*)$/s.exec(text) ?? [];
  if (!isFeed(product)) {
    const example = system === 'us' ? '10-4-8:7' : '10-4-8:200';
    throw refuse('fed-form', { field: '--fed', values: { value: text, unit, example } });
  }
  return { fedProduct: product, fedG: numberOf(weight, '--fed', 'fedG', { kind: 'feed' }, system) };
}

function noteOf(text: string): string {
  const note = text.trim();
  if (note.length <= longestNote) return note;
  throw refuse('note-long', { field: '--note', values: { length: note.length, most: longestNote } });
}

/** What was seen lies back: `MM-DD` is the last such day. */
function dayOf(text: string | undefined, today: number): number {
  if (text === undefined) return today;
  const { year, month, day } = civilDate(today);
  // 29 February was eight years ago at the most
  for (let back = 1; ; back++) {
    const found = parseDate(text, '--date', dayNumber(year - back, month, day) + 1, null);
    if (found <= today || back > 8 || /^\s*\d{4}/.test(text)) return found;
  }
}

function flagOf(option: NumberOption): string {
  return `--${option.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
}
