export {
  climateDayOf,
  climateYearDays,
  daysSinceLongest,
  firstDayOfMonth,
  monthLengths,
  monthOfClimateDay,
} from './climate-year.ts';
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
