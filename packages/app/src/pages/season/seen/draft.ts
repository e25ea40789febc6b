import { formatDay, type Observation, type ObservedNumber } from '@neckfall/engine';
import { newId } from '../../../garden/new-id.ts';
import { dayOf } from './question.ts';

/** What is noted together, in the order in which it is offered. */
export const kinds = {
  watered: ['wateredLitres'],
  fed: ['fedG'],
  measured: ['leavesGreen', 'neckMm', 'bulbMm'],
  counted: ['standCount', 'floweringCount'],
  tops: ['topsOverShare'],
  lifted: ['weighedKg', 'bulbCount', 'thickNeckCount'],
  note: [],
} as const satisfies Record<string, readonly ObservedNumber[]>;
export type Kind = keyof typeof kinds;
export const kindNames = Object.keys(kinds) as Kind[];

/** Numbers asked for on this page; a file may hold others, which stay. */
export type AskedNumber = (typeof kinds)[Kind][number];
const askedNumbers: readonly AskedNumber[] = Object.values(kinds).flat();

/** Whether a draft says something of a kind. */
export function isOfKind({ numbers, fedProduct, lifted }: Draft, kind: Kind): boolean {
  const hasNumber = kinds[kind].some((field) => typeof numbers[field] === 'number');
  return hasNumber || (kind === 'fed' && fedProduct !== '') || (kind === 'lifted' && lifted);
}

/** An entry while it is filled in. */
export type Draft = {
  day: number;
  lookedAt: number;
  numbers: Partial<Record<AskedNumber, number | null>>;
  fedProduct: string;
  lifted: boolean;
  note: string;
};

export function emptyDraft(day: number, lookedAt: number): Draft {
  return { day, lookedAt, numbers: {}, fedProduct: '', lifted: false, note: '' };
}

export function draftOf(entry: Observation, usualLookedAt: number): Draft {
  return {
    day: dayOf(entry),
    lookedAt: entry.lookedAt ?? (isOverPlants(entry) ? 1 : usualLookedAt),
    numbers: Object.fromEntries(askedNumbers.map((field) => [field, entry[field] ?? null])),
    fedProduct: entry.fedProduct ?? '',
    lifted: entry.lifted === true,
    note: entry.note ?? '',
  };
}

/** The tops of a bed are judged by ten plants, which is how they are asked for. */
const plantsOfTops = 10;

/** What a draft says; what it leaves empty is left out. @param before the entry it changes, with fields unknown here */
export function entryOf(draft: Draft, before?: Observation): Observation {
  const entry: Observation = {
    ...(before ?? { id: newId(), plantingId: null }),
    date: formatDay(draft.day),
  };
  for (const field of askedNumbers) put(entry, field, draft.numbers[field] ?? undefined);
  put(entry, 'fedProduct', draft.fedProduct || undefined);
  put(entry, 'lifted', draft.lifted || undefined);
  put(entry, 'note', draft.note.trim() || undefined);
  const isOfTops = entry.topsOverShare !== undefined;
  const plants = isOverPlants(entry)
    ? draft.lookedAt
    : isOfTops
      ? (before?.lookedAt ?? plantsOfTops)
      : undefined;
  put(entry, 'lookedAt', plants);
  return entry;
}

function put<Field extends 'fedProduct' | 'lifted' | 'note' | ObservedNumber>(
  entry: Observation,
  field: Field,
  value: Observation[Field] | undefined,
): void {
  if (value === undefined) delete entry[field];
  else entry[field] = value;
}

/** Whether an entry holds means over the plants looked at. */
export function isOverPlants({ leavesGreen, neckMm, bulbMm }: Observation): boolean {
  return leavesGreen !== undefined || neckMm !== undefined || bulbMm !== undefined;
}

/** Whether it says anything but its day. */
export function saysSomething({
  id: _,
  plantingId: __,
  date: ___,
  lookedAt: ____,
  ...rest
}: Observation): boolean {
  return Object.keys(rest).length > 0;
}
