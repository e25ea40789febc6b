import { climateDayOf, dayNumber, type LocalPractice } from '@neckfall/engine';
import { greatCircleKm } from '../places/index.ts';

/** A row of the asset. */
export type PracticeRow = {
  id: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  class: string;
  start: string;
  /** Sowing of seed, planting of plants and sets, `MM-DD`. */
  from?: string;
  to?: string;
  /** Planting out of raised seedlings. */
  plantOutFrom?: string;
  plantOutTo?: string;
  source: string;
};

/** A published calendar of a district: how its growers start. */
export type PublishedPractice = LocalPractice & {
  id: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
};

/** A district reaches so far, km, and so far up or down, m (our choice). */
const reach = { km: 200, m: 400 } as const;
/** Where only the planting out is printed, seedlings are sown so many days before (common practice, no source: 6–10 weeks). */
const nurseryDays = { most: 70, least: 42 } as const;

export function readPractice(rows: readonly PracticeRow[]): PublishedPractice[] {
  return rows.map((row) => {
    const { id, latitudeDeg, longitudeDeg, elevationM, source } = row;
    return {
      id,
      latitudeDeg,
      longitudeDeg,
      elevationM,
      source,
      class: row.class as LocalPractice['class'],
      start: row.start as LocalPractice['start'],
      span: spanOf(row),
    };
  });
}

/** Practice of the district about a point, the nearest first. */
export function practiceNear(
  published: readonly PublishedPractice[],
  at: { latitudeDeg: number; longitudeDeg: number; elevationM: number },
): PublishedPractice[] {
  return published
    .map((practice) => ({
      practice,
      km: greatCircleKm(at.latitudeDeg, at.longitudeDeg, practice.latitudeDeg, practice.longitudeDeg),
    }))
    .filter(({ practice, km }) => km <= reach.km && Math.abs(practice.elevationM - at.elevationM) <= reach.m)
    .sort((a, b) => a.km - b.km)
    .map(({ practice }) => practice);
}

function spanOf({ id, from, to, plantOutFrom, plantOutTo }: PracticeRow): LocalPractice['span'] {
  if (from && to) return { from: dayOf(from, 0), to: dayOf(to, 0) };
  if (plantOutFrom && plantOutTo)
    return { from: dayOf(plantOutFrom, -nurseryDays.most), to: dayOf(plantOutTo, -nurseryDays.least) };
  throw new Error(`${id}: no days`);
}

function dayOf(date: string, moved: number): number {
  return climateDayOf(dayNumber(2027, Number(date.slice(0, 2)), Number(date.slice(3))) + moved);
}
