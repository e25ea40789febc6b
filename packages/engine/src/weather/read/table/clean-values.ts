import { believable } from '../../believable.ts';
import type { RecordField } from '../../daily-record.ts';
import { type MissingCode, missingCodesIn } from '../../missing-codes.ts';
import { type Flags, flag } from '../flagged.ts';
import type { WeatherQuantity } from '../found.ts';
import { inBase, type UnitName } from '../units.ts';

/** Limits of a believable value of each quantity, a reading or a day of it, in its own unit. */
function limitsOf(as: WeatherQuantity, isDays: boolean): { low: number; high: number } {
  if (as.startsWith('temp')) return believable.tempMinC;
  // in an hour no more than some 400 mm ever fell (memory)
  if (as === 'rainMm') return { low: 0, high: isDays ? believable.rainMm.high : 450 };
  if (as === 'rainDayMm') return believable.rainMm;
  if (as === 'rainSumMm') return { low: 0, high: 30_000 };
  // dark sensors show a little less than nothing
  if (as === 'solarMJ') return { low: -0.1, high: believable.solarMJ.high };
  return { low: -20, high: 1800 };
}

/** What of a day a value makes. */
export const fieldOf = (as: WeatherQuantity, value: number): RecordField => {
  if (as === 'tempMinC' || as === 'tempMaxC') return as;
  if (as === 'tempC') return value < 0 ? 'tempMinC' : 'tempMaxC';
  return as.startsWith('rain') ? 'rainMm' : 'solarMJ';
};

/**
 * Values in the unit of the quantity: codes for “not measured” are none, nor is what can't be, which is flagged.
 *
 * @param day of each value
 */
export function cleanValues(
  raw: Float64Array,
  unit: UnitName,
  as: WeatherQuantity,
  isDays: boolean,
  day: Float64Array,
  flags: Flags,
): { values: Float64Array; codes: Omit<MissingCode, 'column'>[] } {
  const { low, high } = limitsOf(as, isDays);
  const known = raw.filter((value) => !Number.isNaN(value));
  const isBelievable = (value: number) => {
    const base = inBase(value, unit);
    return base >= low && base <= high;
  };
  const codes = missingCodesIn(known, isBelievable);
  const values = raw.map((value, at) => {
    if (Number.isNaN(value) || codes.has(value)) return Number.NaN;
    const base = inBase(value, unit);
    if (base >= low && base <= high) return base;
    flag(flags, day[at]!, fieldOf(as, base), base, 'out-of-range', true);
    return Number.NaN;
  });
  return { values, codes: [...codes].map(([code, days]) => ({ code, days })) };
}
