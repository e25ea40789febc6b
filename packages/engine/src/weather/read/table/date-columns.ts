import type { WeatherCorrections } from '../found.ts';
import { parseDateCell, parseTime } from './date-cells.ts';
import { kindOf } from './delimiter.ts';
import type { HeaderName } from './header-name.ts';
import { isDateName, partOfDate } from './meaning.ts';
import { parseNumber } from './numbers.ts';

/** Columns that say when, by their place in a row. */
export type DateColumns =
  | { kind: 'cells'; date: number; time: number | null; hour: number | null }
  | {
      kind: 'parts';
      year: number;
      month: number;
      day: number;
      time: number | null;
      hour: number | null;
      minute: number | null;
    }
  | { kind: 'day-of-year'; year: number; day: number; time: number | null; hour: number | null }
  /** Seconds, or thousandths of them, since 1970; `day` days since 30 December 1899, as in spreadsheets. */
  | { kind: 'epoch'; column: number; unit: 'second' | 'millisecond' | 'day' };

/** The places of the columns. */
export function placesOf(dates: DateColumns): number[] {
  return Object.values(dates).filter((place) => typeof place === 'number');
}

/** Of the cells that are filled, so many must be dates: heads and sums may stand between the rows. */
const mostCells = 0.6;

type Part = 'year' | 'month' | 'day' | 'dayOfYear' | 'hour' | 'minute';

/** Columns that say when; null where there are none. */
export function dateColumnsOf(
  names: readonly HeaderName[],
  sample: readonly string[][],
  corrections: WeatherCorrections,
): DateColumns | null {
  const asked = (as: string) => {
    const corrected = corrections.columns.find((column) => column.as === as);
    return corrected === undefined ? -1 : names.findIndex(({ column }) => column === corrected.column);
  };
  const named = (part: Part) => names.findIndex((name) => partOfDate(name) === part);
  const pick = (part: Part) => {
    const at = part === 'minute' || part === 'dayOfYear' ? -1 : asked(part);
    return at >= 0 ? at : named(part);
  };
  const kinds = names.map((_, at) => kindsOf(sample, at));
  const isNumeric = (at: number) => at >= 0 && kinds[at]!.number >= mostCells;
  const orNull = (at: number) => (at >= 0 ? at : null);

  const askedTime = asked('time');
  const timeBeside = (date: number) =>
    askedTime >= 0
      ? askedTime
      : names.findIndex((name, at) => at !== date && isTimeColumn(name, kinds[at]!, at === date + 1));
  const hourOf = () => orNull(isNumeric(pick('hour')) ? pick('hour') : -1);

  const cell = asked('date') >= 0 ? asked('date') : bestDateColumn(names, kinds);
  if (cell >= 0 && kinds[cell]!.date >= mostCells) {
    if (kinds[cell]!.dateTime >= mostCells && askedTime < 0)
      return { kind: 'cells', date: cell, time: null, hour: null };
    const time = orNull(timeBeside(cell));
    return { kind: 'cells', date: cell, time, hour: time === null ? hourOf() : null };
  }
  const [year, month, day, dayOfYear] = [pick('year'), pick('month'), pick('day'), pick('dayOfYear')];
  const minute = pick('hour') >= 0 && pick('minute') > pick('hour') ? orNull(pick('minute')) : null;
  if (isNumeric(year) && month >= 0 && isNumeric(day)) {
    const time = orNull(timeBeside(day));
    return { kind: 'parts', year, month, day, time, hour: time === null ? hourOf() : null, minute };
  }
  if (isNumeric(year) && isNumeric(dayOfYear)) {
    const time = orNull(timeBeside(dayOfYear));
    return { kind: 'day-of-year', year, day: dayOfYear, time, hour: time === null ? hourOf() : null };
  }
  return epochColumn(names, sample, asked('date'));
}

type Kinds = Record<'date' | 'dateTime' | 'time' | 'clock' | 'number' | 'digits', number>;

/** Shares of the filled cells of a column that can be read as each kind. */
function kindsOf(sample: readonly string[][], column: number): Kinds {
  const counts = { date: 0, dateTime: 0, time: 0, clock: 0, number: 0, digits: 0 };
  let filled = 0;
  for (const row of sample) {
    const cell = row[column] ?? '';
    const kind = kindOf(cell);
    if (kind === 'empty') continue;
    filled++;
    const date = parseDateCell(cell);
    if (date !== null) counts.date++;
    if (date !== null && !Number.isNaN(date.minute)) counts.dateTime++;
    if (kind === 'number') counts.number++;
    if (/^\d+$/.test(cell)) counts.digits++;
    if (date !== null || parseTime(cell) === null) continue;
    counts.time++;
    if (/[:h]|[ap]\.?\s?m/i.test(cell)) counts.clock++;
  }
  const share = (count: number) => (filled === 0 || filled < sample.length / 4 ? 0 : count / filled);
  return {
    date: share(counts.date),
    dateTime: share(counts.dateTime),
    // 13.30 may be a number, too: all of them must be times
    time: share(counts.time === filled ? counts.time : counts.clock),
    clock: share(counts.clock),
    number: share(counts.number),
    digits: share(counts.digits),
  };
}

/** Local time before UTC, a column named so before one that only looks so, and the first of them. */
function bestDateColumn(names: readonly HeaderName[], kinds: readonly Kinds[]): number {
  let best = -1;
  let most = 0;
  for (const [at, { date, digits }] of kinds.entries()) {
    if (date < mostCells) continue;
    const name = names[at]!;
    const isNamed = isDateName(name);
    if (digits >= mostCells && !isNamed && !/^ \d+ $/.test(name.words)) continue;
    const isUtc = / utc|gmt|dateutc|zulu/.test(name.words);
    const isOther = /start|begin|sun|rise|set |created|updated|receiv|max|min/.test(name.words);
    const score = 1 + (isNamed ? 4 : 0) - (isUtc ? 1 : 0) - (isOther ? 3 : 0);
    if (score > most) [best, most] = [at, score];
  }
  return best;
}

const timeName =
  /time|zeit|hora|heure| ora |orario|uhr|tijd|uur|hour|utc|lst|hr|godz|czas| tid |klock|klokke/;
/** Times that something happened at. */
const otherTime = /sun|moon|max|min|high|low| hi | of |rise|set |gust|durat|lag|peak|hoch|tief/;

function isTimeColumn({ words }: HeaderName, { time, clock }: Kinds, isNext: boolean): boolean {
  if (time < mostCells || otherTime.test(words)) return false;
  if (timeName.test(words)) return true;
  return isNext && clock >= mostCells;
}

function epochColumn(
  names: readonly HeaderName[],
  sample: readonly string[][],
  asked: number,
): DateColumns | null {
  for (const [at, name] of names.entries()) {
    if (asked >= 0 ? at !== asked : !isDateName(name)) continue;
    const values = sample
      .map((row) => parseNumber(row[at] ?? '', '.'))
      .filter((value) => !Number.isNaN(value));
    if (values.length < sample.length * mostCells || values.length === 0) continue;
    const within = (low: number, high: number) => values.every((value) => value >= low && value <= high);
    if (within(1e8, 7e9)) return { kind: 'epoch', column: at, unit: 'second' };
    if (within(1e11, 7e12)) return { kind: 'epoch', column: at, unit: 'millisecond' };
    if (within(10_000, 80_000)) return { kind: 'epoch', column: at, unit: 'day' };
  }
  return null;
}
