/*
 * Exact by definition: the international yard and pound (1959): 1 ft = 0.3048 m, 1 in = 25.4 mm,
 * 1 lb = 0.45359237 kg, 1 oz = 1/16 lb; a US gallon is 231 cubic inches (NIST Handbook 44, appendix C).
 */
const mPerFt = 0.3048;
const mmPerIn = 25.4;
const kgPerLb = 0.45359237;
const gPerOz = (1000 * kgPerLb) / 16;
const litresPerGallon = (231 * mmPerIn ** 3) / 1e6;

/** °C to °F. */
export function celsiusToFahrenheit(tempC: number): number {
  return (tempC * 9) / 5 + 32;
}

/** °F to °C. */
export function fahrenheitToCelsius(tempF: number): number {
  return ((tempF - 32) * 5) / 9;
}

/** A difference of temperatures (a range, a warming), not a temperature. */
export function celsiusToFahrenheitSpan(spanC: number): number {
  return (spanC * 9) / 5;
}

/** mm to in. */
export function mmToInches(mm: number): number {
  return mm / mmPerIn;
}

/** in to mm. */
export function inchesToMm(inches: number): number {
  return inches * mmPerIn;
}

/** g to oz. */
export function gramsToOunces(grams: number): number {
  return grams / gPerOz;
}

/** oz to g. */
export function ouncesToGrams(ounces: number): number {
  return ounces * gPerOz;
}

/** kg per m² to lb per ft². */
export function kgPerM2ToLbPerFt2(kgPerM2: number): number {
  return (kgPerM2 * mPerFt * mPerFt) / kgPerLb;
}

/** lb per ft² to kg per m². */
export function lbPerFt2ToKgPerM2(lbPerFt2: number): number {
  return (lbPerFt2 * kgPerLb) / (mPerFt * mPerFt);
}

/** m to ft. */
export function metresToFeet(metres: number): number {
  return metres / mPerFt;
}

/** ft to m. */
export function feetToMetres(feet: number): number {
  return feet * mPerFt;
}

/** lb to kg. */
export function poundsToKg(pounds: number): number {
  return pounds * kgPerLb;
}

/** US gallons to litres. */
export function gallonsToLitres(gallons: number): number {
  return gallons * litresPerGallon;
}
