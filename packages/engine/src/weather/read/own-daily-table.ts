import type { RecordField } from '../daily-record.ts';
import { firstLineOf } from '../lines-of.ts';
import { type DailyCsvIssue, dailyColumns, readDailyCsv } from '../read-daily-csv.ts';
import { type FixedColumn, takenColumns } from './fixed-columns.ts';
import { checkDays, noFlags } from './flagged.ts';
import type {
  FileReading,
  WeatherCorrections,
  WeatherFormatReader,
  WeatherIssue,
  WeatherText,
} from './found.ts';

const units = { tempMinC: '°C', tempMaxC: '°C', rainMm: 'mm', solarMJ: 'MJ/m²' } as const;
/** The names that a table of our own gives its columns: it says itself what they hold, so that nothing is guessed. */
const columns: readonly (FixedColumn & { as: RecordField })[] = Object.entries(dailyColumns).map(
  ([column, as]) => ({ column, as, unit: units[as] }),
);

export const ownDailyTable: WeatherFormatReader = {
  format: 'own-table',
  knows: (text) => {
    const names = namesOf(text);
    const has = (name: string) => names.includes(name);
    const isOwn = (name: string) => name === 'date' || columns.some(({ column }) => column === name);
    // one name that people use, too, says nothing yet
    return (
      has('date') && names.length > 1 && ((has('temp_min_c') && has('temp_max_c')) || names.every(isOwn))
    );
  },
  read,
};

function read({ file, text, encoding }: WeatherText, corrections: WeatherCorrections): FileReading {
  const names = namesOf(text);
  const there = columns.filter(({ column }) => names.includes(column));
  const wanted = takenColumns(there, corrections);
  if (!wanted.ok) return wanted;
  const result = readDailyCsv(text);
  if (!result.ok) return { ok: false, issue: issueOf(result.issues) };
  const { record, missingCodes, rows } = result;
  for (const column of there) if (!wanted.taken.includes(column)) record.known[column.as].fill(0);
  const flags = noFlags();
  checkDays(record, flags);
  return {
    ok: true,
    found: {
      file,
      format: 'own-table',
      encoding,
      station: null,
      otherStations: [],
      typicalYear: false,
      timeBase: 'as-printed',
      dateOrder: null,
      columns: wanted.taken,
      unused: [],
      missingCodes,
      record,
      daysWithRow: rows,
      ...flags,
    },
  };
}

const codes: Record<DailyCsvIssue['code'], WeatherIssue['code']> = {
  'no-rows': 'no-days',
  'unknown-column': 'unknown-column',
  'missing-column': 'no-values',
  'repeated-column': 'unknown-column',
  'too-many-columns': 'too-many-columns',
  'too-many-lines': 'too-many-lines',
  'wrong-cell-count': 'not-weather',
  'long-cell': 'long-cell',
  'bad-date': 'bad-date',
  'repeated-date': 'bad-date',
  'bad-number': 'not-weather',
  'out-of-range': 'not-weather',
  'min-above-max': 'not-weather',
};

function issueOf(issues: readonly DailyCsvIssue[]): WeatherIssue {
  const [{ code, ...issue }] = issues as [DailyCsvIssue];
  return { ...issue, code: codes[code], more: issues.length - 1 };
}

function namesOf(text: string): string[] {
  return firstLineOf(text.replace(/^\uFEFF/, ''))
    .split(',', 64)
    .map((name) => name.trim());
}
