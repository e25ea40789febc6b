import {
  type DayLengthClass,
  dayNumber,
  type OnionType,
  type Plan,
  type PlantValues,
  planDefaults,
  runnerOf,
  type Site,
  type StartMethod,
  typeForClass,
} from '../../packages/engine/src/index.ts';
import { type Answered, answered } from './answered.ts';
import { nominalYear } from './calendar-rows.ts';
import { scoreSite } from './sites.ts';

/** How a published crop was grown; dates `MM-DD`. */
export type PublishedPlan = {
  lat: number;
  lon: number;
  elevationM: number;
  dayLengthClass: DayLengthClass;
  /** The type, where its class at this place would mean another one. */
  type?: OnionType;
  start: StartMethod;
  date: string;
  plantOut?: string;
  densityPerM2?: number;
  setSizeMm?: number;
  /** Warmth of October to January above the normals, °C. */
  establishmentWarmerC?: number | undefined;
};

/** Which places count: a cross-validation leaves some out. */
export type Places = (of: { lat: number; lon: number }) => boolean;

export const everywhere: Places = () => true;

/** Day number of `MM-DD` in the nominal year. */
export function nominalDay(date: string): number {
  return dayNumber(nominalYear, Number(date.slice(0, 2)), Number(date.slice(3)));
}

export function publishedSite(of: PublishedPlan, values: PlantValues): Site {
  return scoreSite(
    {
      latitudeDeg: of.lat,
      longitudeDeg: of.lon,
      elevationM: of.elevationM,
      establishmentWarmerC: of.establishmentWarmerC,
    },
    values,
  );
}

export function planOf(site: Site, of: PublishedPlan): Plan {
  const startDay = nominalDay(of.date);
  const plantOut = of.plantOut === undefined ? null : nominalDay(of.plantOut);
  return {
    ...planDefaults,
    type: of.type ?? typeForClass(site, of.dayLengthClass, of.start, startDay),
    start: of.start,
    startDay,
    plantOutDay: plantOut !== null && plantOut < startDay ? plantOut + 365 : plantOut,
    densityPerM2: of.densityPerM2 ?? planDefaults.densityPerM2,
    setSizeMm: of.setSizeMm ?? planDefaults.setSizeMm,
  };
}

/** What is answered of the published crop. */
export function answeredOf(of: PublishedPlan, values: PlantValues): Answered & { plan: Plan } {
  const site = publishedSite(of, values);
  const plan = planOf(site, of);
  return { ...answered(site, runnerOf(site, plan)), plan };
}
