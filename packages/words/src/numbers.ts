import type { Say } from './speaker.ts';

type Digits = {
  /** At most so many after the point. */
  digits?: number;
  /** At least so many before it. */
  wholeDigits?: number;
};

/**
 * A number with a comma at every thousand, as English has it; never −0. By ourselves: the first number that a browser
 * formats takes a phone some 50 ms.
 */
export function formatNumber(value: number, { digits = 0, wholeDigits = 1 }: Digits = {}): string {
  if (!Number.isFinite(value)) return String(value);
  const [whole, part = ''] = roundDecimal(Math.abs(value), digits).toFixed(digits).split('.');
  const grouped = whole.padStart(wholeDigits, '0').replace(/\B(?=(\d{3})+$)/g, ',');
  const decimals = part.replace(/0+$/, '');
  const text = decimals === '' ? grouped : `${grouped}.${decimals}`;
  return value < 0 && /[1-9]/.test(text) ? `-${text}` : text;
}

/** Rounds as the number is written, halves up: 9.95 to 10, although the machine holds a little less than it. */
function roundDecimal(value: number, digits: number): number {
  if (value < 1e-6 || value >= 1e15) return Math.round(value);
  return Number(`${Math.round(Number(`${value}e${digits}`))}e-${digits}`);
}

/** A range whose ends read alike is one number. */
export function formatRange(from: string, to: string, say: Say): string {
  if (from === to) return from;
  const isBelowZero = from.startsWith('-') || to.startsWith('-');
  return say(isBelowZero ? 'number.range-below-zero' : 'number.range', { from, to });
}
