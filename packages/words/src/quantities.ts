import type { MessageKey } from './messages.ts';
import { formatNumber, formatRange } from './numbers.ts';
import type { Say } from './speaker.ts';

export type Units = 'metric' | 'us';

/** What a number measures; values arrive in the SI unit named beside it. */
export type Quantity =
  | 'temperature' // °C
  | 'temperatureDifference' // °C
  | 'rain' // mm
  | 'bulbLength' // mm
  | 'bulbMass' // g
  | 'distance' // km
  | 'elevation' // m
  | 'wind' // m/s
  | 'yield' // kg/m²
  | 'crop' // kg
  | 'area' // m²
  | 'rowLength' // m
  | 'spacing' // cm
  | 'density'; // plants per m²

export type QuantityWords = {
  quantity(kind: Quantity, value: number): string;
  /** Both ends with the unit said once where the locale does so. */
  quantityRange(kind: Quantity, from: number, to: number): string;
};

type Rule = { factor: number; digits: number; unit: Extract<MessageKey, `unit.${string}`>; offset?: number };

/** Exact by definition: inch 25.4 mm, ounce 28.349523125 g, mile 1.609344 km, foot 0.3048 m, pound 0.45359237 kg. */
const rules: Record<Units, Record<Quantity, Rule>> = {
  metric: {
    temperature: { factor: 1, digits: 0, unit: 'unit.celsius' },
    temperatureDifference: { factor: 1, digits: 1, unit: 'unit.celsius' },
    rain: { factor: 1, digits: 0, unit: 'unit.millimetre' },
    bulbLength: { factor: 1, digits: 0, unit: 'unit.millimetre' },
    bulbMass: { factor: 1, digits: 0, unit: 'unit.gram' },
    distance: { factor: 1, digits: 0, unit: 'unit.kilometre' },
    elevation: { factor: 1, digits: 0, unit: 'unit.metre' },
    wind: { factor: 1, digits: 1, unit: 'unit.metre-per-second' },
    yield: { factor: 1, digits: 1, unit: 'unit.kg-per-m2' },
    crop: { factor: 1, digits: 1, unit: 'unit.kilogram' },
    area: { factor: 1, digits: 1, unit: 'unit.m2' },
    rowLength: { factor: 1, digits: 1, unit: 'unit.metre' },
    spacing: { factor: 1, digits: 1, unit: 'unit.centimetre' },
    density: { factor: 1, digits: 0, unit: 'unit.plants-per-m2' },
  },
  us: {
    temperature: { factor: 1.8, digits: 0, unit: 'unit.fahrenheit', offset: 32 },
    temperatureDifference: { factor: 1.8, digits: 1, unit: 'unit.fahrenheit' },
    rain: { factor: 1 / 25.4, digits: 1, unit: 'unit.inch' },
    bulbLength: { factor: 1 / 25.4, digits: 1, unit: 'unit.inch' },
    bulbMass: { factor: 1 / 28.349523125, digits: 1, unit: 'unit.ounce' },
    distance: { factor: 1 / 1.609344, digits: 0, unit: 'unit.mile' },
    elevation: { factor: 1 / 0.3048, digits: 0, unit: 'unit.foot' },
    wind: { factor: 3.6 / 1.609344, digits: 0, unit: 'unit.mile-per-hour' },
    yield: { factor: 0.3048 ** 2 / 0.45359237, digits: 2, unit: 'unit.lb-per-ft2' },
    crop: { factor: 1 / 0.45359237, digits: 1, unit: 'unit.pound' },
    area: { factor: 1 / 0.3048 ** 2, digits: 0, unit: 'unit.ft2' },
    rowLength: { factor: 1 / 0.3048, digits: 0, unit: 'unit.foot' },
    spacing: { factor: 1 / 2.54, digits: 1, unit: 'unit.inch' },
    density: { factor: 0.3048 ** 2, digits: 1, unit: 'unit.plants-per-ft2' },
  },
};

export function quantityWords(units: Units, say: Say): QuantityWords {
  const number = ({ factor, digits, offset = 0 }: Rule, value: number) =>
    formatNumber(value * factor + offset, { digits });
  return {
    quantity(kind, value) {
      const rule = rules[units][kind];
      return say(rule.unit, { value: number(rule, value) });
    },
    quantityRange(kind, from, to) {
      const rule = rules[units][kind];
      return say(rule.unit, { value: formatRange(number(rule, from), number(rule, to), say) });
    },
  };
}
