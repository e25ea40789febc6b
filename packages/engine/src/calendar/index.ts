export {
  climateDayOf,
  climateYearDays,
  daysSinceLongest,
  firstDayOfMonth,
  monthLengths,
  monthOfClimateDay,
} from './climate-year.ts';
export type { ClimateDay, CommonYearDay, DayNumber, DayOfYear, SeasonDay } from './day-kinds.ts';
export {
  type CivilDate,
  civilDate,
  dayNumber,
  dayOfYear,
  daysInYear,
  formatDay,
  isLeapYear,
  parseDay,
} from './day-number.ts';
