import { fahrenheitToCelsius, inchesToMm } from '../../units/index.ts';
import type { RecordField } from '../daily-record.ts';

export type ToSi = (value: number) => number;

const same: ToSi = (value) => value;
const temperatures: Record<string, ToSi> = {
  c: same,
  f: fahrenheitToCelsius,
  k: (kelvin) => kelvin - 273.15,
};
const rains: Record<string, ToSi> = { mm: same, cm: (cm) => 10 * cm, in: inchesToMm, inch: inchesToMm };
/** Exact by definition: 1 kWh = 3.6 MJ. */
const suns: Record<string, ToSi> = {
  mj: same,
  kwh: (kWh) => 3.6 * kWh,
  wh: (wattHours) => 0.0036 * wattHours,
};

/**
 * How a value in the unit that a service names becomes °C, mm or MJ m⁻²; null: no unit of that quantity. What stands
 * behind a stroke (per day, per m²) is left to the quantity.
 */
export function toSiOf(field: RecordField | 'tempC', unit: string): ToSi | null {
  const [word = ''] = unit.normalize('NFKC').toLowerCase().split(/[/ ]/);
  const plain = word
    .replace(/^(°|deg)/, '')
    .replace('kw-hr', 'kwh')
    .replace('w-hr', 'wh');
  const units = field === 'rainMm' ? rains : field === 'solarMJ' ? suns : temperatures;
  return Object.hasOwn(units, plain) ? units[plain]! : null;
}
