export { type DayLength, type DayLengthConvention, dayLength, fillDayLengths } from './day-length.ts';
export { photoperiodOfSunUp } from './photoperiod-of-sun-up.ts';
export {
  clearSkyRadiation,
  daylightHoursFao,
  extraterrestrialRadiation,
  solarRadiation,
  solarRadiationFromRange,
} from './radiation.ts';
