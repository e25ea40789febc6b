import { monthOf } from './date-cells.ts';
import { dayOf } from './day-of-parts.ts';

/**
 * Months one below the other, each under its name and year, whose rows begin with the day alone: the lines with whole
 * dates in place of the days. Null where there are none such.
 */
export function datedBlocks(lines: readonly string[]): string[] | null {
  let year = 0;
  let month = 0;
  let before = 0;
  let dated = 0;
  const whole = lines.map((line) => {
    const heading = headingOf(line);
    if (heading !== null) {
      year = heading.year || year;
      month = heading.month || month;
      before = 0;
      return line;
    }
    const [start, day] = /^[\s,;|]*"?(\d{1,2})\.?"?(?=[\s,;|])/.exec(line) ?? [];
    const number = Number(day);
    if (start === undefined || year === 0 || month === 0) return line;
    if (number <= before || Number.isNaN(dayOf(year, month, number))) return line;
    before = number;
    dated++;
    return `${year}-${two(month)}-${two(number)}${line.slice(start.length)}`;
  });
  return dated < fewestDays ? null : whole;
}

/** Fewer rows may be a list of something else. */
const fewestDays = 2;
/** No heading is longer. */
const longestHeading = 120;

/** A line that says a year, a month or both, and no other number; 0 for what it does not say. */
function headingOf(line: string): { year: number; month: number } | null {
  if (line.length > longestHeading) return null;
  const numbers = line.match(/\d+/g) ?? [];
  const year = /^(?:1[7-9]|2[01])\d\d$/.test(numbers[0] ?? '') ? Number(numbers[0]) : 0;
  if (numbers.length > 1 || (numbers.length === 1 && year === 0)) return null;
  const words = line.match(/[\p{L}\uFFFD]{3,}/gu) ?? [];
  // with a year the month stands beside it; alone it is all that the line says
  const beside = /([\p{L}\uFFFD]{3,})[\s.,/-]*\d{4}/u.exec(line)?.[1] ?? '';
  const month = monthOf(year > 0 ? beside : words.length === 1 ? words[0]! : '');
  return year > 0 || month > 0 ? { year, month } : null;
}

const two = (number: number) => String(number).padStart(2, '0');
