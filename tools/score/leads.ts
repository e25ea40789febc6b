import {
  chooseKinds,
  classOfType,
  type DayLengthClass,
  dayNumber,
  type SeasonSummary,
  type Site,
  surveyOf,
  typeForClass,
} from '../../packages/engine/src/index.ts';
import { type CalendarRow, nominalYear, type Window } from './calendar-rows.ts';

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

/** As near as an advised start is asked to lie to a published window, days. */
export const nearDays = 14;

/** Days by which a day of any year misses a window; 0 inside. */
function missOfWindow(day: number, window: Window): number {
  const middle = (window.from + window.to) / 2;
  const off = day - middle;
  return Math.max(0, Math.abs(off - 365 * Math.round(off / 365)) - (window.to - window.from) / 2);
}

/** How far a season's start lies from a row's windows, days. */
export function missOfSeason(row: CalendarRow, { plan, plantOut }: SeasonSummary): number {
  const { startWindow, plantOutWindow } = row;
  return Math.min(
    startWindow ? missOfWindow(plan.startDay, startWindow) : Number.POSITIVE_INFINITY,
    plantOutWindow && plantOut?.days
      ? missOfWindow(plantOut.days.p50, plantOutWindow)
      : Number.POSITIVE_INFINITY,
  );
}

/** Rows read in full of crops that come out well, with a start. */
export function advisedRows(rows: readonly CalendarRow[]): CalendarRow[] {
  return rows.filter(
    ({ weight, outcome, startWindow, plantOutWindow }) =>
      weight === 1 && (outcome === null || outcome === 'good') && (startWindow || plantOutWindow),
  );
}

const newYear = dayNumber(nominalYear, 1, 1);

/** Days by which the best date of a row's class and start misses the windows published for them there. */
export function bestDateMiss(row: CalendarRow, rows: readonly CalendarRow[], site: Site): number {
  const { from } = (row.startWindow ?? row.plantOutWindow)!;
  const type = typeForClass(site, row.class, row.start, from);
  const kind = {
    names: [row.id],
    type,
    traits: null,
    start: row.start,
    keepsMonths: [4, 6],
    keepsFrom: 'type',
  } as const;
  const [{ summary }] = chooseKinds(site, [kind], newYear)!;
  // a place may have several crops a year, each with its own window
  const crops = rows.filter(
    (other) =>
      other.class === row.class &&
      other.start === row.start &&
      Math.abs(other.latitudeDeg - row.latitudeDeg) < 0.3 &&
      Math.abs(other.longitudeDeg - row.longitudeDeg) < 0.3,
  );
  return Math.min(...crops.map((crop) => missOfSeason(crop, summary)));
}

/** The class that leads at a place, and those that its calendars use. */
export function leadAt(
  place: PublishedPlace,
  site: Site,
): { lead: DayLengthClass; used: readonly DayLengthClass[] } {
  const { type } = surveyOf(site, newYear).lead();
  return { lead: classOfType[type], used: [...new Set(place.rows.map((row) => row.class))] };
}
