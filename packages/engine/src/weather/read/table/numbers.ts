import { unitOf } from '../units.ts';

export type DecimalMark = '.' | ',';

/** Ten to the power of a number of decimals that a double holds exactly. */
const powers = Array.from({ length: 23 }, (_, at) => 10 ** at);

const isDigit = (code: number) => code >= 48 && code <= 57;

/**
 * The number in a cell, NaN where there is none. Groups of three digits may be set off; a unit or asterisk may follow.
 * A mark that no three digits follow is one of decimals, whichever the file has.
 */
export function parseNumber(cell: string, decimal: DecimalMark): number {
  const { length } = cell;
  let at = 0;
  let isNegative = false;
  const sign = cell.charCodeAt(0);
  if (sign === 45 || sign === 0x2212 || sign === 43) {
    isNegative = sign !== 43;
    at = 1;
  }
  let mantissa = 0;
  let digits = 0;
  let decimals = -1;
  for (; at < length; at++) {
    const code = cell.charCodeAt(at);
    if (isDigit(code)) {
      mantissa = mantissa * 10 + code - 48;
      digits++;
      if (decimals >= 0) decimals++;
      continue;
    }
    const isMark = code === 46 || code === 44;
    const isGroup =
      isMark || ((code === 32 || code === 39 || code === 0xa0 || code === 0x202f) && digits > 0);
    if (!isGroup || decimals >= 0) break;
    const isThree = areDigits(cell, at + 1, 3) && !isDigit(cell.charCodeAt(at + 4));
    // 0,254 has no thousands
    if (isMark && !(isThree && mantissa > 0 && digits <= 9 && cell[at] !== decimal)) decimals = 0;
    else if (!isThree) break;
  }
  if (digits === 0 || digits > 300) return Number.NaN;
  let value = mantissa;
  if (decimals > 0)
    value = decimals < powers.length ? mantissa / powers[decimals]! : mantissa / 10 ** decimals;
  if (at < length) {
    const rest = cell.slice(at).trim();
    const exponent = /^e([+-]?\d{1,2})$/i.exec(rest);
    if (exponent) value *= 10 ** Number(exponent[1]);
    else if (rest !== '*' && rest !== '' && unitOf(rest) === null) return Number.NaN;
  }
  return isNegative ? -value : value;
}

function areDigits(text: string, from: number, count: number): boolean {
  for (let at = from; at < from + count; at++) if (!isDigit(text.charCodeAt(at))) return false;
  return true;
}

/** The mark of decimals in a table, from cells that hold one. */
export function decimalMarkOf(cells: Iterable<string>, isCommaFree: boolean): DecimalMark {
  let points = 0;
  let commas = 0;
  let groups = 0;
  for (const cell of cells) {
    const number = /^[+-]?\d*([.,])(\d+)(?!\d|[.,:/-])/.exec(cell);
    if (number === null) {
      // 1.013,2 and 1,013.2
      const both = /^[+-]?\d{1,3}(?:\.\d{3})*,\d+$/.exec(cell) ?? /^[+-]?\d{1,3}(?:,\d{3})*\.\d+$/.exec(cell);
      if (both) cell.lastIndexOf(',') > cell.lastIndexOf('.') ? commas++ : points++;
    } else if (number[1] === '.') points++;
    else if (number[2]!.length === 3 && !/^[+-]?0?,/.test(cell)) groups++;
    else commas++;
  }
  if (commas + groups === 0) return '.';
  if (commas === 0) return points === 0 && isCommaFree ? ',' : '.';
  return commas >= points ? ',' : '.';
}
