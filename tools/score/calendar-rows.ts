import { readFileSync } from 'node:fs';
import {
  type DayLengthClass,
  dayNumber,
  type StartMethod,
  type Verdict,
} from '../../packages/engine/src/index.ts';

/** A published growing calendar or planting-date trial, turned into days of one nominal year. */
export type CalendarRow = {
  id: string;
  place: string;
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  class: DayLengthClass;
  start: StartMethod;
  /** Sowing (seed, raised seedlings) or planting (bought plants, sets); null: only the planting out is known. */
  startWindow: Window | null;
  plantOutWindow: Window | null;
  harvestWindow: Window | null;
  /** How it was grown, where the source says so. */
  densityPerM2: number | null;
  setSizeMm: number | null;
  setStore: 'cold' | 'warm' | null;
  /** Warmth of October to January above the normals, °C. */
  establishmentWarmerC: number;
  /** Verdict the source states; null where it states none. */
  outcome: Verdict | null;
  /** 1 where both windows were read in a source, 0.5 where one was, 0 where none was. */
  weight: number;
  source: string;
};

/** Day numbers; `from` ≤ `to`. */
export type Window = { from: number; to: number };

/** Nominal year of the windows: calendars are statements about any year. */
export const nominalYear = 2015;

const starts: Record<string, StartMethod> = {
  'direct seed': 'direct-seed',
  'seedlings raised': 'raised-seedlings',
  transplants: 'bought-transplants',
  sets: 'sets',
};

/** What the notes of some rows say of how the crop was grown, read in the same source as the row. */
const stated: Record<
  string,
  { densityPerM2?: number; setSizeMm?: number; setStore?: 'warm'; establishmentWarmerC?: number } | undefined
> = {
  'za-bloem-11may': { densityPerM2: 61 },
  'za-bloem-8jun': { densityPerM2: 61 },
  'za-adelaide-sets': { setSizeMm: 11 },
  // Kept from spring to July in Punjab, where days pass 35 °C: that the store was warm is inferred.
  'in-kapurthala-sets': { setSizeMm: 29, setStore: 'warm' },
  'sd-khartoum-sets': { setSizeMm: 18.5 },
  'eg-sakha': { densityPerM2: 45 },
  'eg-sakha-late': { densityPerM2: 45 },
  'kr-gyeongnam-warm': { establishmentWarmerC: 2.6 },
};

type RawRow = {
  id: string;
  region: string;
  country: string;
  lat: number;
  lon: number;
  elevationM: number;
  dayLengthClass: DayLengthClass;
  method: string;
  sowWindow: [string, string] | null;
  transplantWindow: [string, string] | null;
  harvestWindow: [string, string] | null;
  unseenFields: string[] | null;
  outcome?: string | null;
  seen: boolean;
  source: { title: string; organisation: string; year: number | null };
};

/** Reads a calendar file (the columns of the committed fixture). Throws on a row without place, class or method. */
export function readCalendarRows(path: string): CalendarRow[] {
  return (JSON.parse(readFileSync(path, 'utf8')) as RawRow[]).map(toRow);
}

function toRow(raw: RawRow): CalendarRow {
  const start = starts[raw.method];
  if (!start || !Number.isFinite(raw.lat) || !raw.dayLengthClass)
    throw new Error(`${raw.id}: row is incomplete`);
  const raised = start === 'raised-seedlings';
  const planted = start === 'bought-transplants' || start === 'sets';
  const startWindow = windowOf(planted ? raw.transplantWindow : raw.sowWindow);
  const plantOutWindow = raised ? windowOf(raw.transplantWindow) : null;
  const unseen = new Set(raw.unseenFields ?? []);
  const startSeen =
    raw.seen &&
    (raised
      ? (raw.sowWindow !== null && !unseen.has('sowWindow')) ||
        (raw.transplantWindow !== null && !unseen.has('transplantWindow'))
      : !unseen.has(planted ? 'transplantWindow' : 'sowWindow'));
  const harvestSeen = raw.seen && !unseen.has('harvestWindow');
  return {
    id: raw.id,
    place: `${raw.region}, ${raw.country}`,
    latitudeDeg: raw.lat,
    longitudeDeg: raw.lon,
    elevationM: raw.elevationM,
    class: raw.dayLengthClass,
    start,
    startWindow: startWindow && plantOutWindow ? pair(startWindow, plantOutWindow) : startWindow,
    plantOutWindow,
    harvestWindow: windowOf(raw.harvestWindow),
    densityPerM2: stated[raw.id]?.densityPerM2 ?? null,
    setSizeMm: stated[raw.id]?.setSizeMm ?? null,
    setStore: stated[raw.id]?.setStore ?? null,
    establishmentWarmerC: stated[raw.id]?.establishmentWarmerC ?? 0,
    outcome: raw.outcome ? (raw.outcome.replace(' ', '-') as Verdict) : null,
    weight: (startSeen ? 0.5 : 0) + (harvestSeen ? 0.5 : 0),
    source: [raw.source.title, raw.source.organisation, raw.source.year].filter(Boolean).join('; '),
  };
}

function windowOf(text: [string, string] | null): Window | null {
  if (!text) return null;
  const [from, to] = text.map((part) =>
    dayNumber(nominalYear, Number(part.slice(0, 2)), Number(part.slice(3, 5))),
  );
  return { from, to: to < from ? to + 365 : to };
}

/** Moves a sowing window to the year before where it would fall after its planting out. */
function pair(sowing: Window, plantOut: Window): Window {
  return sowing.from > plantOut.from ? { from: sowing.from - 365, to: sowing.to - 365 } : sowing;
}
