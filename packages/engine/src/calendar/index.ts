export {
  civilDate,
  dayNumber,
  dayOfYear,
  daysInYear,
  formatDay,
  isLeapYear,
  parseDay,
  type CivilDate,
} from './day-number.ts';
export { climateDayOf, climateYearDays, firstDayOfMonth, monthLengths, monthOfClimateDay } from './climate-year.ts';
