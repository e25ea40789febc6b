/*
 * Exact by definition: the international yard and pound (1959): 1 ft = 0.3048 m, 1 in = 25.4 mm,
 * 1 lb = 0.45359237 kg, 1 oz = 1/16 lb; a US gallon is 231 cubic inches (NIST Handbook 44, appendix C).
 */
const mPerFt = 0.3048;
const mmPerIn = 25.4;
const kgPerLb = 0.45359237;
const gPerOz = (1000 * kgPerLb) / 16;
const litresPerGallon = (231 * mmPerIn ** 3) / 1e6;

export function celsiusToFahrenheit(tempC: number): number {
  return (tempC * 9) / 5 + 32;
}

export function fahrenheitToCelsius(tempF: number): number {
  return ((tempF - 32) * 5) / 9;
}

/** A difference of temperatures (a range, a warming), not a temperature. */
export function celsiusToFahrenheitSpan(spanC: number): number {
  return (spanC * 9) / 5;
}

export function mmToInches(mm: number): number {
  return mm / mmPerIn;
}

export function inchesToMm(inches: number): number {
  return inches * mmPerIn;
}

export function gramsToOunces(grams: number): number {
  return grams / gPerOz;
}

export function ouncesToGrams(ounces: number): number {
  return ounces * gPerOz;
}

export function kgPerM2ToLbPerFt2(kgPerM2: number): number {
  return (kgPerM2 * mPerFt * mPerFt) / kgPerLb;
}

export function lbPerFt2ToKgPerM2(lbPerFt2: number): number {
  return (lbPerFt2 * kgPerLb) / (mPerFt * mPerFt);
}

export function metresToFeet(metres: number): number {
  return metres / mPerFt;
}

export function feetToMetres(feet: number): number {
  return feet * mPerFt;
}

export function poundsToKg(pounds: number): number {
  return pounds * kgPerLb;
}

export function gallonsToLitres(gallons: number): number {
  return gallons * litresPerGallon;
}
