import type { RunCause } from './causes.ts';
import type { SeasonFacts } from './season-facts.ts';

/** A thing that a cause may change of a season. */
export type Fact = Exclude<keyof SeasonFacts, 'weight' | 'smallDryG' | 'hopedDryG'>;

export const bulb: readonly Fact[] = [
  'hasBulb',
  'isRipe',
  'bulbMm',
  'bulbDryG',
  'leavesAtOnset',
  'thirstyDays',
];
const flower: readonly Fact[] = ['boltedShare', 'boltedIfProne'];
export const winter: readonly Fact[] = ['killedShare', 'liftedShare'];
const store: readonly Fact[] = ['stored'];

/** What a cause does to a season; whatever else a season without it has is not its doing. */
const acts: Readonly<Record<RunCause, readonly Fact[]>> = {
  'days-too-short': bulb,
  'type-too-late': bulb,
  'type-too-early': bulb,
  'started-too-late': bulb,
  'cold-on-large-plants': flower,
  'large-sets': flower,
  'cold-stored-sets': flower,
  heat: bulb,
  'cool-season': [...bulb, ...flower],
  thirst: bulb,
  crowding: bulb,
  shade: bulb,
  'winter-cold': winter,
  'cold-soil': ['emergedShare'],
  'warm-store': store,
  'damp-store': store,
  'short-keeper': store,
  'frozen-store': store,
  'lifted-unripe': store,
  'wrong-seed': [...bulb, ...flower],
};

/** Seasons with what a cause does taken from other ones, one by one. */
export function actedOn(
  { cause, acts: fields = acts[cause] }: { cause: RunCause; acts?: readonly Fact[] },
  seasons: readonly SeasonFacts[],
  others: readonly SeasonFacts[],
): SeasonFacts[] {
  return seasons.map((of, at) => ({
    ...of,
    ...Object.fromEntries(fields.map((field) => [field, others[at][field]])),
  }));
}

/** Seasons without a cause: taking it away kills no plant and turns none to flower, whatever else it brings. */
export function without(
  of: Parameters<typeof actedOn>[0],
  seasons: readonly SeasonFacts[],
  others: readonly SeasonFacts[],
): SeasonFacts[] {
  const least = (field: 'killedShare' | 'liftedShare' | 'boltedShare' | 'boltedIfProne', at: number) =>
    Math.min(seasons[at][field], others[at][field]);
  const cured = others.map((other, at) => ({
    ...other,
    killedShare: least('killedShare', at),
    liftedShare: least('liftedShare', at),
    boltedShare: least('boltedShare', at),
    boltedIfProne: least('boltedIfProne', at),
    emergedShare: Math.max(seasons[at].emergedShare, other.emergedShare),
  }));
  return actedOn(of, seasons, cured);
}
