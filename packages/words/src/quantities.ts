import { numberFormat } from './formats.ts';
import type { Locale, Say } from './speaker.ts';

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

type Rule = { factor: number; digits: number; unit: string; offset?: number };

/** Exact by definition: inch 25.4 mm, ounce 28.349523125 g, mile 1.609344 km, foot 0.3048 m, pound 0.45359237 kg. */
const rules: Record<Units, Record<Quantity, Rule>> = {
  metric: {
    temperature: { factor: 1, digits: 0, unit: 'celsius' },
    temperatureDifference: { factor: 1, digits: 1, unit: 'celsius' },
    rain: { factor: 1, digits: 0, unit: 'millimeter' },
    bulbLength: { factor: 1, digits: 0, unit: 'millimeter' },
    bulbMass: { factor: 1, digits: 0, unit: 'gram' },
    distance: { factor: 1, digits: 0, unit: 'kilometer' },
    elevation: { factor: 1, digits: 0, unit: 'meter' },
    wind: { factor: 1, digits: 1, unit: 'meter-per-second' },
    yield: { factor: 1, digits: 1, unit: 'unit.kg-per-m2' },
    crop: { factor: 1, digits: 1, unit: 'kilogram' },
    area: { factor: 1, digits: 1, unit: 'unit.m2' },
    rowLength: { factor: 1, digits: 1, unit: 'meter' },
    spacing: { factor: 1, digits: 1, unit: 'centimeter' },
    density: { factor: 1, digits: 0, unit: 'unit.plants-per-m2' },
  },
  us: {
    temperature: { factor: 1.8, digits: 0, unit: 'fahrenheit', offset: 32 },
    temperatureDifference: { factor: 1.8, digits: 1, unit: 'fahrenheit' },
    rain: { factor: 1 / 25.4, digits: 1, unit: 'inch' },
    bulbLength: { factor: 1 / 25.4, digits: 1, unit: 'inch' },
    bulbMass: { factor: 1 / 28.349523125, digits: 1, unit: 'ounce' },
    distance: { factor: 1 / 1.609344, digits: 0, unit: 'mile' },
    elevation: { factor: 1 / 0.3048, digits: 0, unit: 'foot' },
    wind: { factor: 3.6 / 1.609344, digits: 0, unit: 'mile-per-hour' },
    yield: { factor: 0.3048 ** 2 / 0.45359237, digits: 2, unit: 'unit.lb-per-ft2' },
    crop: { factor: 1 / 0.45359237, digits: 1, unit: 'pound' },
    area: { factor: 1 / 0.3048 ** 2, digits: 0, unit: 'unit.ft2' },
    rowLength: { factor: 1 / 0.3048, digits: 0, unit: 'foot' },
    spacing: { factor: 1 / 2.54, digits: 1, unit: 'inch' },
    density: { factor: 0.3048 ** 2, digits: 1, unit: 'unit.plants-per-ft2' },
  },
};

/** A range whose ends read alike is one number. */
export function formatRange(format: Intl.NumberFormat, from: number, to: number): string {
  const first = format.format(from);
  return first === format.format(to) ? first : format.formatRange(from, to);
}

export function quantityWords(locale: Locale, units: Units, say: Say): QuantityWords {
  const number = ({ unit, digits }: Rule) =>
    numberFormat(locale, {
      maximumFractionDigits: digits,
      signDisplay: 'negative', // no −0
      ...(unit.startsWith('unit.') ? {} : { style: 'unit', unit, unitDisplay: 'short' }),
    });
  const convert = (rule: Rule, value: number) => value * rule.factor + (rule.offset ?? 0);
  const finish = (rule: Rule, text: string) =>
    rule.unit.startsWith('unit.') ? say(rule.unit as 'unit.kg-per-m2', { value: text }) : text;

  return {
    quantity(kind, value) {
      const rule = rules[units][kind];
      return finish(rule, number(rule).format(convert(rule, value)));
    },
    quantityRange(kind, from, to) {
      const rule = rules[units][kind];
      return finish(rule, formatRange(number(rule), convert(rule, from), convert(rule, to)));
    },
  };
}
