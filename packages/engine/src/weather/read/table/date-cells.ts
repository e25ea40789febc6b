/**
 * What a cell of dates says. `form` tells which number is the year: the numbers are in that order. `open` leaves open
 * which of the first two is the month, and with two digits even where the year stands.
 */
export type DateCell = {
  form: 'ymd' | 'open';
  a: number;
  b: number;
  c: number;
  /** Minutes after midnight, 0…1440; NaN where the cell has no time. */
  minute: number;
  /** Minutes that the cell's time is ahead of UTC; NaN where it says nothing. */
  offset: number;
};

const months: readonly RegExp[] = [
  /^(?:jan|ene|gen|sty)/,
  /^(?:feb|f.v|fev|lut)/,
  /^(?:mar|m.r|mrt|maart|maerz)/,
  /^(?:apr|avr|abr|kwi)/,
  /^(?:may|mai|mei|mag|maj)/,
  /^(?:jun|juin|giu|cze)/,
  /^(?:jul|juil|lug|lip)/,
  /^(?:aug|ago|ao.t|aout|sie)/,
  /^(?:sep|set|wrz)/,
  /^(?:oct|okt|out|ott|pa[zź])/,
  /^(?:nov|lis)/,
  /^(?:dec|d.c|dez|dic|gru|des)/,
];

/** 1…12 by its name in a language that we read; 0 for another word. */
export function monthOf(word: string): number {
  const plain = word.toLowerCase();
  return months.findIndex((month) => month.test(plain)) + 1;
}

const digitsAt = (text: string, from: number, count: number): number => {
  let value = 0;
  for (let at = from; at < from + count; at++) {
    const digit = text.charCodeAt(at) - 48;
    if (!(digit >= 0 && digit <= 9)) return -1;
    value = value * 10 + digit;
  }
  return value;
};

/** A date with or without a time; null for anything else. Plain numbers are dates only as `yyyymmdd…`. */
export function parseDateCell(cell: string): DateCell | null {
  if (cell.length < 6 || cell.length > 60) return null;
  if (cell.charCodeAt(0) <= 57) return parseDate(cell);
  // the day of the week before it; of Jan 1, 2022 and Mar 12, 2022 the word is the month
  const bare = cell.replace(/^[a-zà-ž]{2,12}\.?,?\s+(?=\d)/i, '');
  if (/^\d+[-/.]\d/.test(bare)) return parseDate(bare);
  return parseDate(cell) ?? (bare === cell ? null : parseDate(bare));
}

function parseDate(cell: string): DateCell | null {
  const separator = cell[4];
  if ((separator === '-' || separator === '/' || separator === '.') && cell[7] === separator) {
    const [year, month, day] = [digitsAt(cell, 0, 4), digitsAt(cell, 5, 2), digitsAt(cell, 8, 2)];
    if (year >= 0 && month > 0 && day > 0) return withTime('ymd', year, month, day, cell.slice(10));
  }
  const parts = /^(\d{1,4})(\s*[-/.]\s*|\s)(\d{1,2})(?:\2|\s*[-/.]\s*)(\d{1,4})\.?(?=$|[T\s_,;-])(.*)$/i.exec(
    cell,
  );
  if (parts) {
    const [a, b, c] = [Number(parts[1]), Number(parts[3]), Number(parts[4])];
    if (parts[1]!.length >= 3) return parts[1]!.length === 4 ? withTime('ymd', a, b, c, parts[5]!) : null;
    return parts[4]!.length === 3 ? null : withTime('open', a, b, c, parts[5]!);
  }
  return namedMonth(cell) ?? compact(cell);
}

/** 1 June 2024, 01-Jun-24, Jun 1, 2024, 2024-Jun-01, with the day of the week before it. */
function namedMonth(cell: string): DateCell | null {
  const text = cell.replace(/^[a-zà-ÿ]{2,12}\.?,\s+/i, '');
  const dayFirst =
    /^(\d{1,4})(?:st|nd|rd|th|er|\.)?[-/.\s]*(?:de\s+|di\s+)?([a-zà-ž\uFFFD]{3,12})\.?[-/.,\s]*(?:de\s+|del\s+)?(\d{1,4})(?=$|\D)(.*)$/i.exec(
      text,
    );
  if (dayFirst) {
    const month = monthOf(dayFirst[2]!);
    if (month === 0) return null;
    const [first, last] = [Number(dayFirst[1]), Number(dayFirst[3])];
    if (dayFirst[1]!.length === 4) return withTime('ymd', first, month, last, dayFirst[4]!);
    return withTime('ymd', fullYear(last, dayFirst[3]!.length), month, first, dayFirst[4]!);
  }
  const monthFirst =
    /^([a-zà-ž\uFFFD]{3,12})\.?[-/\s]+(\d{1,2})(?:st|nd|rd|th)?[-/,\s]+(\d{4}|\d{2})(?=$|\D)(.*)$/i.exec(
      text,
    );
  if (!monthFirst) return null;
  const month = monthOf(monthFirst[1]!);
  if (month === 0) return null;
  const year = fullYear(Number(monthFirst[3]), monthFirst[3]!.length);
  return withTime('ymd', year, month, Number(monthFirst[2]), monthFirst[4]!);
}

/** yyyymmdd, with hour, minutes and seconds behind it. */
function compact(cell: string): DateCell | null {
  const match =
    /^([12]\d{3})([01]\d)([0-3]\d)(?:[T\s_:-]?([0-2]\d)(?::?([0-5]\d)(?::?\d\d)?)?)?(Z|UTC)?$/.exec(cell);
  if (!match) return null;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (month < 1 || month > 12 || day < 1 || day > 31) return null;
  const minute = match[4] === undefined ? Number.NaN : Number(match[4]) * 60 + Number(match[5] ?? 0);
  return { form: 'ymd', a: year, b: month, c: day, minute, offset: match[6] ? 0 : Number.NaN };
}

/** 69 and less are of this century. */
export function fullYear(year: number, digits: number): number {
  return digits > 2 ? year : year + (year < 70 ? 2000 : 1900);
}

function withTime(form: DateCell['form'], a: number, b: number, c: number, rest: string): DateCell | null {
  if (rest === '') return { form, a, b, c, minute: Number.NaN, offset: Number.NaN };
  const time = parseTime(rest.replace(/^[T\s_,;-]+/i, ''));
  if (time === null) return null;
  return { form, a, b, c, ...time };
}

/** No time of day has more characters, zone and all. */
const longestTime = 48;

/** A time of day, with its offset from UTC; null for anything else. An empty text is none. */
export function parseTime(text: string): { minute: number; offset: number } | null {
  if (text === '') return { minute: Number.NaN, offset: Number.NaN };
  // 00:00 and 00:00:00, as most have it
  if (text[2] === ':' && (text.length === 5 || (text.length === 8 && text[5] === ':'))) {
    const [hour, minute] = [digitsAt(text, 0, 2), digitsAt(text, 3, 2)];
    if (hour >= 0 && minute >= 0 && hour <= 24 && minute < 60)
      return { minute: hour * 60 + minute, offset: Number.NaN };
  }
  // blanks without end take the pattern below ages
  if (text.length > longestTime) return null;
  const match =
    /^(\d{1,2})(?:(?:\s?[:.h]\s?)(\d{2}))?(?:[:.](\d{2})(?:[.,]\d+)?)?\s*(uhr|h|hs|hrs|[ap]\.?\s?m?\.?)?\s*(Z|UTC|GMT)?\s*(?:(?:UTC|GMT)?([+\-\u2212])(\d{2}):?(\d{2})?)?\s*(?:\[[^\]]*\]|[A-Z]{3,4})?$/i.exec(
      text,
    );
  if (match) {
    const half = /^[ap]/i.exec(match[4] ?? '')?.[0];
    let hour = Number(match[1]);
    if (match[2] === undefined && !match[4]) return null;
    if (half !== undefined) {
      if (hour > 12) return null;
      hour = (hour % 12) + (half === 'p' || half === 'P' ? 12 : 0);
    }
    const minute = hour * 60 + Number(match[2] ?? 0);
    if (minute > 1440 || Number(match[2] ?? 0) > 59) return null;
    return { minute, offset: offsetOf(match[5], match[6], match[7], match[8]) };
  }
  const four = /^(\d{2})(\d{2})(?:\d{2})?\s*(Z|UTC|GMT)?$/i.exec(text);
  if (!four || Number(four[1]) > 24 || Number(four[2]) > 59) return null;
  return { minute: Number(four[1]) * 60 + Number(four[2]), offset: four[3] ? 0 : Number.NaN };
}

function offsetOf(zero?: string, sign?: string, hours?: string, minutes?: string): number {
  if (sign === undefined || hours === undefined) return zero === undefined ? Number.NaN : 0;
  const offset = Number(hours) * 60 + Number(minutes ?? 0);
  return sign === '+' ? offset : -offset;
}
