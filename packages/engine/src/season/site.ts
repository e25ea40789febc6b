import { civilDate, climateDayOf, climateYearDays, type DayNumber, dayNumber } from '../calendar/index.ts';
import { dailyCurve, type MonthlyClimate } from '../climate/index.ts';
import {
  type Cover,
  defaultPlantValues,
  type PlantValues,
  type StartMethod,
  valuesAt,
} from '../plant/index.ts';
import { fillDayLengths } from '../sky/index.ts';
import {
  type DailyRecord,
  meanYear,
  recordedYears,
  type WeatherSeries,
  weatherYears,
} from '../weather/index.ts';
import { type Draw, drawsOf, noDraw } from './draws.ts';
import { type Drivers, driversOf, repeatDrivers, type Smoothed } from './drivers.ts';
import type { LocalPractice } from './local-practice.ts';

/** Hours of day from 1 January of a year on, three years long. */
export type DayTable = { firstDay: DayNumber; sunUpH: Float64Array; photoperiodH: Float64Array };

/** A place made ready to try plans at: its climate, weather years, day lengths and parameter draws, each made when first asked for. */
export type Site = {
  climate: MonthlyClimate;
  values: PlantValues;
  /** How the district's growers start, where published. */
  practice: readonly LocalPractice[];
  /** Seasons of an answer, each a weather year with a draw. */
  years: number;
  /** Weather years that these meet: as many, unless several draws share one. */
  weatherYears: number;
  seed: number;
  longestDayH: number;
  /** Ways of starting for which the grower has what it takes in the hand, whatever shops have. */
  atHand: readonly StartMethod[];
  /** Drivers of the mean climate, three years long. */
  mean: (cover: Cover) => Drivers;
  /**
   * Drivers of the weather years, `strideDays` apart, long enough for the last season to end. With a record they
   * hold its days for seasons started in the calendar year `startYear`; 29 February is left out, so days after one
   * within a season are met a day late.
   */
  generated: (cover: Cover, startYear: number) => Drivers;
  /** Days from one weather year to the next in {@link Site.generated}. */
  strideDays: number;
  /** Which weather year a season meets: its own, unless there are more seasons than weather years. */
  weatherYear: (season: number) => number;
  /** A draw for each season. */
  draws: () => readonly Draw[];
  /** The middle of the draws. */
  middleDraw: Draw;
  /** Day lengths here from a calendar year on. */
  dayTable: (year: number) => DayTable;
  /** Whether a record makes one calendar year differ from another. */
  isDated: boolean;
  /** Days measured, or forecast, that every season shares; null: none. */
  record: DailyRecord | null;
  /** Best dry bulb here by way of growing, filled by the judge (see reference-bulb). */
  referenceG: Map<string, number>;
  /** The same place opened anew with something otherwise, each season with its own draw. */
  reopened: (otherwise: Partial<Pick<SiteOptions, 'climate' | 'years' | 'record'>>) => Site;
};

/** What a site is opened with. */
export type SiteOptions = {
  /** Climate with any warming already added. */
  climate: MonthlyClimate;
  /** Weather years to draw, 1…200. */
  years: number;
  /** Whole number; the same seed gives the same answer. */
  seed: number;
  values?: PlantValues;
  practice?: readonly LocalPractice[];
  /** Measured days, which every weather year then shares: they take the place of generated ones. */
  record?: DailyRecord | null;
};

/** No season started in a year ends after the second year that follows. */
const seasonYears = 3;
// Share of the days with ≥ 0.1 mm that bring ≥ 1 mm (memory: about 0.7 in temperate records).
const soakingShare = 0.7;

/**
 * A place made ready to try plans at. Cheap in itself: weather years, day lengths and draws are made when a plan first
 * asks for them, then kept (a few MB), so open one for a place and use it for every plan there. `siteAt` of
 * `@neckfall/data` opens the site of a point.
 */
export function openSite(options: SiteOptions): Site {
  const { climate, years, seed, values = defaultPlantValues, practice = [], record = null } = options;
  const { growth } = values;
  const longestDayH = longest(climate);
  const means = new Map<Cover, Drivers>();
  const generated = new Map<number, Map<Cover, Drivers>>();
  const tables = new Map<number, DayTable>();
  let weather: WeatherSeries | null = null;
  let draws: Draw[] | null = null;
  const dayTable = (year: number): DayTable => {
    let table = tables.get(year);
    if (!table) {
      const firstDay = dayNumber(year, 1, 1);
      const length = dayNumber(year + seasonYears, 1, 1) - firstDay;
      table = { firstDay, sunUpH: new Float64Array(length), photoperiodH: new Float64Array(length) };
      fillDayLengths(climate.latitudeDeg, climate.longitudeDeg, firstDay, 'sun-up', table.sunUpH);
      fillDayLengths(climate.latitudeDeg, climate.longitudeDeg, firstDay, 'civil', table.photoperiodH);
      tables.set(year, table);
    }
    return table;
  };
  return {
    climate,
    values: valuesAt(values, longestDayH),
    practice,
    years,
    weatherYears: years,
    seed,
    longestDayH,
    atHand: [],
    mean(cover) {
      let drivers = means.get(cover);
      if (!drivers) {
        const year = driversOf(meanYear(climate), cover, growth, smoothedBy(climate), climate);
        drivers = repeatDrivers(year, seasonYears);
        means.set(cover, drivers);
      }
      return drivers;
    },
    generated(cover, startYear) {
      // without a record every start year meets the same weather
      const year = record ? startYear : 0;
      let byCover = generated.get(year);
      if (!byCover) {
        byCover = new Map();
        generated.set(year, byCover);
      }
      let drivers = byCover.get(cover);
      if (!drivers) {
        weather ??= weatherYears(climate, years + seasonYears - 1, seed);
        const met = record ? recordedYears(weather, years, seasonYears, year, record) : weather;
        drivers = driversOf(met, cover, growth, null, climate);
        byCover.set(cover, drivers);
      }
      return drivers;
    },
    strideDays: record ? seasonYears * climateYearDays : climateYearDays,
    weatherYear: (season) => season,
    middleDraw: noDraw,
    draws() {
      draws ??= drawsOf(years, seed);
      return draws;
    },
    dayTable,
    isDated: record !== null,
    record,
    referenceG: new Map(),
    reopened: (otherwise) => openSite({ ...options, ...otherwise }),
  };
}

function longest(climate: MonthlyClimate): number {
  const hours = new Float64Array(climateYearDays);
  fillDayLengths(climate.latitudeDeg, climate.longitudeDeg, dayNumber(2027, 1, 1), 'sun-up', hours);
  return hours.reduce((a, b) => Math.max(a, b), 0);
}

/** Daily means vary a little less than daily minima (memory: 0.85 of it, mid-latitude records). */
const meanToMinSpread = 0.85;

function smoothedBy(climate: MonthlyClimate): Smoothed {
  const wetShare = new Float64Array(climateYearDays);
  dailyCurve(climate.wetDays, wetShare);
  const spreadC = new Float64Array(climateYearDays);
  dailyCurve(climate.minTempSdC, spreadC);
  return {
    wetShare: wetShare.map((wetDays) => (soakingShare * wetDays) / (climateYearDays / 12)),
    spreadC: spreadC.map((sd) => meanToMinSpread * Math.max(0, sd)),
  };
}

/** Index of a day in a site's generated drivers, for season `season` (0 is the first). */
export function driverIndex(site: Site, day: DayNumber, season: number): number {
  return site.weatherYear(season) * site.strideDays + climateDayOf(day);
}

/** The calendar year of a day. */
export function calendarYear(day: DayNumber): number {
  return civilDate(day).year;
}
