import { parseDay } from '../calendar/index.ts';
import { gardenRanges } from './garden.ts';
import { givenId, isNumberIn, type RestoreEntry, type Tell, type Unknown } from './restoring.ts';

/** Numbers of an observation, each with a range of its own in {@link gardenRanges}. */
export const observedNumbers = [
  'lookedAt',
  'leavesGreen',
  'neckMm',
  'bulbMm',
  'standCount',
  'floweringCount',
  'topsOverShare',
  'wateredLitres',
  'fedG',
  'weighedKg',
  'bulbCount',
  'thickNeckCount',
  'soundCount',
  'sproutedCount',
  'rottenCount',
] as const;

/** One of {@link observedNumbers}. */
export type ObservedNumber = (typeof observedNumbers)[number];

/**
 * What was seen of a planting on a day, or done to it. Only what was noted is there: a garden of twenty years has
 * many thousands of them. Means are over the plants looked at.
 */
export type Observation = Unknown & {
  id: string;
  /** Id of a planting of the same garden; null: of none that it has. */
  plantingId: string | null;
  /** ISO date. */
  date: string;
  /** Plants looked at; left out: one. */
  lookedAt?: number;
  /** Green leaves standing on a plant, 0…30; halves and other fractions where it is a mean. */
  leavesGreen?: number;
  /** Across the neck, and across the bulb where it is widest, mm. */
  neckMm?: number;
  bulbMm?: number;
  /** Plants that stand, in all. */
  standCount?: number;
  /** Plants with a flower stalk, in all. */
  floweringCount?: number;
  /** Share of the plants whose tops are over, 0…1. */
  topsOverShare?: number;
  /** Water given to the planting, l. */
  wateredLitres?: number;
  /** Feed given to the planting: its N-P-K as printed, per cent, and its weight, g. */
  fedProduct?: string;
  fedG?: number;
  /** True on the day it was lifted. */
  lifted?: true;
  /** Bulbs weighed together, kg, and how many they were. */
  weighedKg?: number;
  bulbCount?: number;
  /** Of the bulbs counted, those whose neck stayed thick. */
  thickNeckCount?: number;
  /** Bulbs of the store that were sound, had sprouted or had gone rotten. */
  soundCount?: number;
  sproutedCount?: number;
  rottenCount?: number;
  note?: string;
};

/** Longer notes are cut, characters. */
export const longestNote = 2_000;

/** An observation without a day is none. */
export const restoreObservation: RestoreEntry<Observation> = (found, path, tell) => {
  if (!isDate(found.date)) return null;
  const kept: Observation = {
    ...found,
    id: givenId(found),
    plantingId: typeof found.plantingId === 'string' ? found.plantingId : null,
    date: found.date,
  };
  // few of them are there
  for (const field in kept) {
    const isFit = fits.get(field);
    if (isFit && !isFit(kept[field])) leaveOut(kept, field, path, tell);
  }
  if (kept.note !== undefined && kept.note.length > longestNote) {
    tell('emptied', `${path}.note`, kept.note);
    kept.note = kept.note.slice(0, longestNote);
  }
  return kept;
};

/** What may stand in each field that need not be there. */
const fits = new Map<string, (value: unknown) => boolean>([
  ...observedNumbers.map((field) => [field, isIn(gardenRanges[field])] as const),
  ['fedProduct', isFeed],
  ['lifted', (value) => value === true],
  ['note', (value) => typeof value === 'string' && value.trim() !== ''],
]);

function isIn(range: readonly [number, number]) {
  return (value: unknown) => isNumberIn(value, range);
}

/** Takes out what can't be used; anything but nothing that stood there is told. */
function leaveOut(kept: Observation, field: string, path: string, tell: Tell): void {
  const value = kept[field];
  delete kept[field];
  if (value !== undefined && value !== null && value !== false) tell('emptied', `${path}.${field}`, value);
}

/** N-P-K as bags print it, per cent by weight: three numbers that make 100 at most. */
export function isFeed(value: unknown): value is string {
  if (typeof value !== 'string') return false;
  const parts = /^(\d{1,3}(?:\.\d{1,2})?)-(\d{1,3}(?:\.\d{1,2})?)-(\d{1,3}(?:\.\d{1,2})?)$/.exec(value);
  return parts !== null && Number(parts[1]) + Number(parts[2]) + Number(parts[3]) <= 100;
}

/** A full date, written as it is read. */
export function isDate(value: unknown): value is string {
  return typeof value === 'string' && parseDay(value) !== null;
}
