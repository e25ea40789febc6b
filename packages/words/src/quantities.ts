import type { Locale, MessageKey } from './messages.ts';
import { formatOf, formatRange } from './numbers.ts';
import type { Say } from './speaker.ts';

export type Units = 'metric' | 'us';

/** What a number measures; values arrive in the SI unit named beside it. */
export type Quantity =
  | 'temperature' // °C
  | 'temperatureDifference' // °C
  | 'rain' // mm
  | 'dayTemperature' // °C, as finely as it is read
  | 'dayRain' // mm, the same
  | 'bulbLength' // mm
  | 'bulbMass' // g
  | 'distance' // km
  | 'elevation' // m
  | 'wind' // m/s
  | 'yield' // kg/m²
  | 'crop' // kg
  | 'water' // l
  | 'area' // m²
  | 'rowLength' // m
  | 'spacing' // cm
  | 'density' // plants per m²
  | 'feed' // g/m²
  | 'watering' // l/m²
  | 'warmth'; // °C d

export type QuantityWords = {
  quantity(kind: Quantity, value: number): string;
  /** Both ends with the unit said once where the locale does so. */
  quantityRange(kind: Quantity, from: number, to: number): string;
};

/** `unit` is one that locales have a way to write; `words` is our message round the number for those that they lack. */
type Rule = { factor: number; digits: number; offset?: number } & (
  | { unit: string }
  | { words: Extract<MessageKey, `unit.${string}`> }
);

/** Exact by definition: inch 25.4 mm, ounce 28.349523125 g, mile 1.609344 km, foot 0.3048 m, pound 0.45359237 kg, US
 * gallon 3.785411784 l. */
const rules: Record<Units, Record<Quantity, Rule>> = {
  metric: {
    temperature: { factor: 1, digits: 0, unit: 'celsius' },
    temperatureDifference: { factor: 1, digits: 1, unit: 'celsius' },
    rain: { factor: 1, digits: 0, unit: 'millimeter' },
    dayTemperature: { factor: 1, digits: 1, unit: 'celsius' },
    dayRain: { factor: 1, digits: 1, unit: 'millimeter' },
    bulbLength: { factor: 1, digits: 0, unit: 'millimeter' },
    bulbMass: { factor: 1, digits: 0, unit: 'gram' },
    distance: { factor: 1, digits: 0, unit: 'kilometer' },
    elevation: { factor: 1, digits: 0, unit: 'meter' },
    wind: { factor: 1, digits: 1, unit: 'meter-per-second' },
    yield: { factor: 1, digits: 1, words: 'unit.kg-per-m2' },
    crop: { factor: 1, digits: 1, unit: 'kilogram' },
    water: { factor: 1, digits: 1, unit: 'liter' },
    area: { factor: 1, digits: 1, words: 'unit.m2' },
    rowLength: { factor: 1, digits: 1, unit: 'meter' },
    spacing: { factor: 1, digits: 1, unit: 'centimeter' },
    density: { factor: 1, digits: 0, words: 'unit.plants-per-m2' },
    feed: { factor: 1, digits: 0, words: 'unit.g-per-m2' },
    watering: { factor: 1, digits: 0, words: 'unit.l-per-m2' },
    warmth: { factor: 1, digits: 0, words: 'unit.degree-days-c' },
  },
  us: {
    temperature: { factor: 1.8, digits: 0, unit: 'fahrenheit', offset: 32 },
    temperatureDifference: { factor: 1.8, digits: 1, unit: 'fahrenheit' },
    rain: { factor: 1 / 25.4, digits: 1, unit: 'inch' },
    dayTemperature: { factor: 1.8, digits: 1, unit: 'fahrenheit', offset: 32 },
    dayRain: { factor: 1 / 25.4, digits: 2, unit: 'inch' },
    bulbLength: { factor: 1 / 25.4, digits: 1, unit: 'inch' },
    bulbMass: { factor: 1 / 28.349523125, digits: 1, unit: 'ounce' },
    distance: { factor: 1 / 1.609344, digits: 0, unit: 'mile' },
    elevation: { factor: 1 / 0.3048, digits: 0, unit: 'foot' },
    wind: { factor: 3.6 / 1.609344, digits: 0, unit: 'mile-per-hour' },
    yield: { factor: 0.3048 ** 2 / 0.45359237, digits: 2, words: 'unit.lb-per-ft2' },
    crop: { factor: 1 / 0.45359237, digits: 1, unit: 'pound' },
    water: { factor: 1 / 3.785411784, digits: 1, unit: 'gallon' },
    area: { factor: 1 / 0.3048 ** 2, digits: 0, words: 'unit.ft2' },
    rowLength: { factor: 1 / 0.3048, digits: 0, unit: 'foot' },
    spacing: { factor: 1 / 2.54, digits: 1, unit: 'inch' },
    density: { factor: 0.3048 ** 2, digits: 1, words: 'unit.plants-per-ft2' },
    feed: { factor: (100 * 0.3048 ** 2) / 453.59237, digits: 1, words: 'unit.lb-per-100ft2' },
    watering: { factor: (10 * 0.3048 ** 2) / 3.785411784, digits: 1, words: 'unit.gal-per-10ft2' },
    warmth: { factor: 1.8, digits: 0, words: 'unit.degree-days-f' },
  },
};

export function quantityWords(units: Units, locale: Locale, say: Say): QuantityWords {
  function told(
    kind: Quantity,
    write: (format: Intl.NumberFormat, inUnits: (si: number) => number) => string,
  ) {
    const rule = rules[units][kind];
    const inUnits = (si: number) => si * rule.factor + (rule.offset ?? 0);
    if ('words' in rule) return say(rule.words, { value: write(formatOf(locale, rule.digits), inUnits) });
    return write(formatOf(locale, rule.digits, { style: 'unit', unit: rule.unit }), inUnits);
  }
  return {
    quantity: (kind, value) => told(kind, (format, inUnits) => format.format(inUnits(value))),
    quantityRange: (kind, from, to) =>
      told(kind, (format, inUnits) => formatRange(format, inUnits(from), inUnits(to))),
  };
}
