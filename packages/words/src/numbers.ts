import { numberFormat } from './formats.ts';

/** Never −0. */
export function formatOf(locale: string, digits: number, options?: Intl.NumberFormatOptions) {
  return numberFormat(locale, { maximumFractionDigits: digits, signDisplay: 'negative', ...options });
}

/** A range whose ends read alike is one number. */
export function formatRange(format: Intl.NumberFormat, from: number, to: number): string {
  const one = format.format(from);
  return one === format.format(to) ? one : format.formatRange(from, to);
}
