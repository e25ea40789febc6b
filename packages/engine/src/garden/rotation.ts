import { civilDate, type DayNumber, parseDay } from '../calendar/index.ts';
import { bedOf, type GardenBed } from './bed.ts';
import type { Garden } from './garden.ts';
import type { GardenPlanting } from './planting.ts';

/**
 * Years to keep onions, garlic and leeks off a bed: three for downy mildew (University of Wisconsin plant pathology,
 * onion downy mildew; INRA: over three), up to six for pink root (PNW Plant Disease Handbook, three to six). White rot
 * lives in the ground for more than twenty (UC IPM): there is no return.
 */
export const alliumBreakYears = { downyMildew: 3, pinkRoot: 6 } as const;

/** What a bed has carried before a crop. */
export type AlliumsBefore = {
  bed: GardenBed;
  /** The last calendar year in which an allium stood there before the crop, and how many years ago that is then. */
  last: { year: number; yearsAgo: number } | null;
  whiteRot: boolean;
  /** White rot: never again. Short: within the years of downy mildew. Roots: within those of pink root. */
  finding: 'white-rot' | 'short' | 'roots' | 'clear';
};

/** What the bed of a planting has carried before it; null where it lies in none, or no day of it is known. */
export function alliumsBefore(
  garden: Pick<Garden, 'beds' | 'plantings' | 'observations'>,
  planting: Pick<GardenPlanting, 'id' | 'bedId' | 'startDate' | 'plantOutDate'>,
): AlliumsBefore | null {
  const bed = bedOf(garden, planting);
  const from = inBedFrom(planting);
  if (!bed || from === null) return null;
  const year = civilDate(from).year;
  const years = [
    ...bed.alliumYears.filter((stood) => stood <= year),
    ...garden.plantings.flatMap((other) => {
      if (other.bedId !== bed.id || other.id === planting.id) return [];
      const until = inBedUntil(garden, other);
      // what stands beside it has not stood before it
      return until !== null && until <= from ? [civilDate(until).year] : [];
    }),
  ];
  const lastYear = years.length === 0 ? null : Math.max(...years);
  const last = lastYear === null ? null : { year: lastYear, yearsAgo: year - lastYear };
  const whiteRot = bed.whiteRot === true;
  return { bed, last, whiteRot, finding: whiteRot ? 'white-rot' : findingOf(last?.yearsAgo ?? null) };
}

function findingOf(yearsAgo: number | null): AlliumsBefore['finding'] {
  if (yearsAgo === null || yearsAgo >= alliumBreakYears.pinkRoot) return 'clear';
  return yearsAgo < alliumBreakYears.downyMildew ? 'short' : 'roots';
}

function inBedFrom({
  startDate,
  plantOutDate,
}: Pick<GardenPlanting, 'startDate' | 'plantOutDate'>): DayNumber | null {
  const date = plantOutDate ?? startDate;
  return date === null ? null : parseDay(date);
}

/** From setting out to lifting, where no day of lifting was noted (common practice, no source). */
const usualDaysInBed = 150;

function inBedUntil(
  { observations }: Pick<Garden, 'observations'>,
  planting: GardenPlanting,
): DayNumber | null {
  const from = inBedFrom(planting);
  const lifted = observations.find(({ plantingId, lifted }) => plantingId === planting.id && lifted === true);
  const liftedOn = lifted ? parseDay(lifted.date) : null;
  return liftedOn ?? (from === null ? null : from + usualDaysInBed);
}
