import { refuse } from '../refusal/refusal.ts';

export type NumberRule = { field: string; min: number; max: number; whole?: boolean; unit?: string };

const form = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i;

/** Reads a number with decimal point or comma; null for anything else (NaN, Infinity, hex, empty). */
export function readNumber(text: string): number | null {
  const trimmed = text.trim().replace('−', '-');
  return form.test(trimmed) ? Number(trimmed.replace(',', '.')) : null;
}

/** A number in its range, or a refusal that names the option, the value and the range. */
export function parseNumber(text: string, rule: NumberRule): number {
  const { field, min, max, whole = false, unit } = rule;
  const value = readNumber(text);
  if (value === null || value < min || value > max || (whole && !Number.isInteger(value))) {
    throw refuse(whole ? 'whole-number' : 'number', {
      field,
      values: { value: text, min, max, unit: unit ?? 'none' },
      expected: `${min}…${max}`,
    });
  }
  return value;
}
