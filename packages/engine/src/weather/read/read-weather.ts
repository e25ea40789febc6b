import type { DailyRecord } from '../daily-record.ts';
import type {
  FileReading,
  FoundFile,
  ReadingPlace,
  WeatherCorrections,
  WeatherIssue,
  WeatherText,
} from './found.ts';
import { joinRecords } from './join-records.ts';
import { type Overlap, overlapOf } from './overlap.ts';
import { readerOf } from './readers.ts';
import { totalsOf, type WeatherTotals } from './totals.ts';

/** What the files of one record come to. */
export type WeatherReading = {
  files: FoundFile[];
  /** Typical years have the days of 2001. */
  record: DailyRecord;
  typicalYear: boolean;
  daysWithRow: number;
  /** Where a file gives other values than those before it for the same days; its own stand. */
  overlaps: (Overlap & { file: string })[];
  totals: WeatherTotals;
};

/** A reading, or the first thing that stands against one. */
export type WeatherResult =
  | { ok: true; reading: WeatherReading }
  /** Nothing is taken of any file where one is refused. */
  | { ok: false; file: string; issue: WeatherIssue };

/** Reads files as one record, each by its content, in the order given: several of one variable each, or of a year each. */
export function readWeather(
  files: readonly WeatherText[],
  corrections: WeatherCorrections,
  place: ReadingPlace,
): WeatherResult {
  const found: FoundFile[] = [];
  const known = new Set<string>();
  let strange: { file: string; issue: WeatherIssue } | null = null;
  for (const file of files) {
    const { reading, unknown } = readOne(file, corrections, place, files.length > 1);
    if (!reading.ok) return { ok: false, file: file.file, issue: reading.issue };
    if (found.length > 0 && found[0]!.typicalYear !== reading.found.typicalYear) {
      return { ok: false, file: file.file, issue: besideTypical(found[0]!.typicalYear) };
    }
    found.push(reading.found);
    for (const { column } of corrections.columns) {
      const issue = unknown.get(column);
      if (issue === undefined) known.add(column);
      else strange ??= { file: file.file, issue };
    }
  }
  if (strange !== null && corrections.columns.some(({ column }) => !known.has(column))) {
    return { ok: false, ...strange };
  }
  return { ok: true, reading: joined(found) };
}

/** Of several files each knows its own columns: a correction of one that it lacks is passed over, and told back. */
function readOne(
  file: WeatherText,
  corrections: WeatherCorrections,
  place: ReadingPlace,
  isOneOfSeveral: boolean,
) {
  const unknown = new Map<string, WeatherIssue>();
  const reader = readerOf(file.text);
  if (reader === null) return { reading: notWeather(file), unknown };
  let { columns } = corrections;
  for (;;) {
    const reading: FileReading = reader.read(file, { ...corrections, columns }, place);
    if (reading.ok || reading.issue.code !== 'unknown-column' || !isOneOfSeveral) return { reading, unknown };
    const { field } = reading.issue;
    const left = columns.filter(({ column }) => column !== field);
    if (left.length === columns.length) return { reading, unknown };
    unknown.set(field, reading.issue);
    columns = left;
  }
}

function notWeather({ text }: WeatherText): FileReading {
  const [received = ''] = text
    .trim()
    .slice(0, 60)
    .split(/[\r\n]/, 1);
  const expected = 'a table with a line a day or a reading, or a file of one of the services that are known';
  return { ok: false, issue: { code: 'not-weather', line: null, field: '', received, expected } };
}

function besideTypical(isFirstTypical: boolean): WeatherIssue {
  const [received, expected] = isFirstTypical
    ? ['weather that came', 'a typical year, as the file before it']
    : ['a typical year', 'weather that came, as in the file before it'];
  return { code: 'typical-beside-real', line: null, field: '', received, expected };
}

function joined(files: FoundFile[]): WeatherReading {
  let { record } = files[0]!;
  const overlaps: WeatherReading['overlaps'] = [];
  for (const { file, record: later } of files.slice(1)) {
    const overlap = overlapOf(record, later);
    if (overlap.differing > 0) overlaps.push({ file, ...overlap });
    record = joinRecords(record, later);
  }
  return {
    files,
    record,
    typicalYear: files[0]!.typicalYear,
    daysWithRow: rowsOf(files, record),
    overlaps,
    totals: totalsOf(record),
  };
}

/** Days with a row in some file: all from first to last of a file without gaps, and of another those with a value. */
function rowsOf(files: readonly FoundFile[], joined: DailyRecord): number {
  if (files.length === 1) return files[0]!.daysWithRow;
  const marks = new Uint8Array(joined.days);
  for (const { record, daysWithRow } of files) {
    const offset = record.firstDay - joined.firstDay;
    const { tempMinC, tempMaxC, rainMm, solarMJ } = record.known;
    for (let at = 0; at < record.days; at++) {
      const hasRow = daysWithRow === record.days;
      if (hasRow || tempMinC[at] || tempMaxC[at] || rainMm[at] || solarMJ[at]) marks[offset + at] = 1;
    }
  }
  return marks.reduce((sum, mark) => sum + mark, 0);
}
