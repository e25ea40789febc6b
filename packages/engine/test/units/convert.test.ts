import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
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
} from '../../src/units/index.ts';

describe('conversions', () => {
  // NIST Special Publication 811, appendix B (memory); exact unless rounded to the digits shown.
  it.each([
    ['freezing', celsiusToFahrenheit(0), 32],
    ['boiling', celsiusToFahrenheit(100), 212],
    ['where both scales meet', celsiusToFahrenheit(-40), -40],
    ['a warming by 5 °C', celsiusToFahrenheitSpan(5), 9],
    ['an inch', inchesToMm(1), 25.4],
    ['a foot', feetToMetres(1), 0.3048],
    ['an ounce', ouncesToGrams(1), 28.349523125],
    ['a pound', ouncesToGrams(16), 453.59237],
    ['a pound a square foot', lbPerFt2ToKgPerM2(1), 4.88242763638305],
  ])('%s', (_, actual, expected) => {
    expect(actual).toBeCloseTo(expected, 12);
  });

  it.each([
    ['°C', celsiusToFahrenheit, fahrenheitToCelsius],
    ['mm', mmToInches, inchesToMm],
    ['g', gramsToOunces, ouncesToGrams],
    ['kg/m²', kgPerM2ToLbPerFt2, lbPerFt2ToKgPerM2],
    ['m', metresToFeet, feetToMetres],
  ])('%s come back from the other unit', (_, there, back) => {
    fc.assert(
      fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), (value) => {
        expect(back(there(value))).toBeCloseTo(value, 9);
      }),
      { seed: 1959 },
    );
  });
});
