export {
  celsiusToFahrenheit,
  celsiusToFahrenheitSpan,
  fahrenheitToCelsius,
  feetToMetres,
  gramsToOunces,
  inchesToMm,
  kgPerM2ToLbPerFt2,
  lbPerFt2ToKgPerM2,
  metresToFeet,
  mmToInches,
  ouncesToGrams,
} from './convert.ts';
