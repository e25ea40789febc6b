import {
  civilDate,
  type DayNumber,
  dayNumber,
  daysInYear,
  type FrostStatistics,
  fillDayLengths,
  frostStatistics,
  isLeapYear,
  type MonthlyClimate,
  monthlyReferenceEt,
  type Site,
  weatherYears,
} from '@neckfall/engine';

/** The sky and climate of a place, warming included. */
export type PlaceFacts = {
  climate: MonthlyClimate;
  /** 1…12 */
  months: readonly number[];
  referenceEtMm: Float64Array;
  year: number;
  /** 365 days, 1 January first; 29 February is left out. */
  sunUpH: Float64Array;
  photoperiodH: Float64Array;
  frost: FrostStatistics;
};

/** 29 February, counted from 0. */
const leapDay = 59;
/** Frost dates need whole winters: at least this many weather years. */
const fewestYears = 30;

export function placeFacts(site: Site, today: DayNumber): PlaceFacts {
  const { climate } = site;
  const { year } = civilDate(today);
  const hours = (convention: 'sun-up' | 'civil') => {
    const byDay = new Float64Array(daysInYear(year));
    fillDayLengths(climate.latitudeDeg, climate.longitudeDeg, dayNumber(year, 1, 1), convention, byDay);
    return isLeapYear(year) ? byDay.filter((_, day) => day !== leapDay) : byDay;
  };
  const weather = weatherYears(climate, Math.max(fewestYears, site.years) + 1, site.seed);
  return {
    climate,
    months: Array.from({ length: 12 }, (_, month) => month + 1),
    referenceEtMm: monthlyReferenceEt(climate),
    year,
    sunUpH: hours('sun-up'),
    photoperiodH: hours('civil'),
    frost: frostStatistics(weather, climate.latitudeDeg),
  };
}
