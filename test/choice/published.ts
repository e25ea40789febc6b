import { offersOf } from '../../packages/answers/src/index.ts';
import { cultivars } from '../../packages/data/src/index.ts';
import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  type ClimateNodes,
  climateAt,
  dayNumber,
  type Kind,
  kindsOf,
  openSite,
  type Site,
} from '../../packages/engine/src/index.ts';
import { type CalendarRow, nominalYear, type Window } from '../../tools/score/calendar-rows.ts';

/** A place with the calendars published for it. */
export type PublishedPlace = {
  name: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  rows: CalendarRow[];
};

/** Rows of crops that come out well, gathered where they lie close together; from north to south. */
export function placesOf(rows: readonly CalendarRow[]): PublishedPlace[] {
  const places: PublishedPlace[] = [];
  for (const row of rows) {
    if (row.outcome !== null && row.outcome !== 'good') continue;
    const near = places.find(
      (place) =>
        Math.abs(place.latitudeDeg - row.latitudeDeg) < 1.5 &&
        Math.abs(place.longitudeDeg - row.longitudeDeg) < 2 &&
        Math.abs(place.elevationM - row.elevationM) < 400,
    );
    if (near) near.rows.push(row);
    else {
      const { place: name, latitudeDeg, longitudeDeg, elevationM } = row;
      places.push({ name, latitudeDeg, longitudeDeg, elevationM, rows: [row] });
    }
  }
  return places.sort((a, b) => b.latitudeDeg - a.latitudeDeg);
}

let nodes: ClimateNodes | null = null;

/** In the climate of the normals' years, without any warming: so old are most calendars. */
export function siteOf(at: { latitudeDeg: number; longitudeDeg: number; elevationM: number | null }): Site {
  nodes ??= readClimateNodes();
  const climate = climateAt(nodes, at.latitudeDeg, at.longitudeDeg, at.elevationM);
  return openSite({ climate, years: 12, seed: 1 });
}

/** Kinds with several names: nearly all of the catalogue in a third of the work. */
export const commonKinds: readonly Kind[] = kindsOf(offersOf(cultivars)).filter(
  ({ names }) => names.length > 2,
);

export const newYear = dayNumber(nominalYear, 1, 1);

/** Days by which a day of any year misses a window; 0 inside. */
export function missOf(day: number, { from, to }: Window): number {
  let least = Number.POSITIVE_INFINITY;
  for (let shift = -730; shift <= 730; shift += 365) {
    const at = day + shift;
    least = Math.min(least, at < from ? from - at : at > to ? at - to : 0);
  }
  return least;
}
