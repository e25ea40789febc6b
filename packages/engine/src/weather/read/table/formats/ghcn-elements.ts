import { weatherLines } from '../../../../limits/index.ts';
import { firstLineOf, linesOf } from '../../../lines-of.ts';
import { type DaysMet, dayMet, recordOfDays } from '../../days-met.ts';
import { checkDays, flag, noFlags } from '../../flagged.ts';
import type {
  FileReading,
  FoundColumn,
  WeatherCorrections,
  WeatherFormatReader,
  WeatherText,
} from '../../found.ts';
import { dayOf } from '../day-of-parts.ts';
import { issue } from '../find-table.ts';

/*
 * GHCN-Daily, a line for a value: station, yyyymmdd, element, value, flags of measurement, quality and source, time
 * (NOAA, readme of `by_year`). Temperatures in tenths of °C, rain in tenths of mm.
 */
const elements: Record<string, { as: 'tempMaxC' | 'tempMinC' | 'rainMm'; unit: string }> = {
  TMAX: { as: 'tempMaxC', unit: '0.1 °C' },
  TMIN: { as: 'tempMinC', unit: '0.1 °C' },
  PRCP: { as: 'rainMm', unit: '0.1 mm' },
};
/** Rain of several days together: it says nothing of one of them. */
const ofSeveralDays = 'MDPR';
const row =
  /^"?([A-Z]{2}[A-Z0-9_-]{9})"?,"?(\d{4})-?(\d{2})-?(\d{2})"?,"?([A-Z0-9]{4})"?,\s*"?(-?\d+)"?(?:,([^,]*),([^,]*)|$|,)/;

function read({ file, text, encoding }: WeatherText, corrections: WeatherCorrections): FileReading {
  const days: DaysMet = new Map();
  const flags = noFlags();
  const stations = new Set<string>();
  const used = new Set<string>();
  const others = new Set<string>();
  const left = new Set(corrections.columns.flatMap(({ column, as }) => (as === null ? [column] : [])));
  const strange = corrections.columns.find(({ column, as }) => as !== null && elements[column]?.as !== as);
  if (strange)
    return issue('unknown-column', null, strange.column, 'TMAX, TMIN or PRCP as they are', strange.column);
  let station = '';
  let number = 0;
  for (const line of linesOf(text)) {
    if (++number > weatherLines) return issue('too-many-lines', number, '', `at most ${weatherLines} lines`);
    const parts = line.length > 200 ? null : row.exec(line);
    if (parts === null) {
      if (line.trim() === '' || number === 1) continue;
      return issue('bad-date', number, line, 'a station, a day as YYYYMMDD, an element and a whole number');
    }
    const [, name, year, month, date, element] = parts as unknown as string[];
    stations.add(name!);
    if (station === '') station = name!;
    if (name !== station) continue;
    const day = dayOf(Number(year), Number(month), Number(date));
    if (Number.isNaN(day))
      return issue('bad-date', number, line, 'a day that exists, of the years 1700 to 2200');
    const known = element === ofSeveralDays ? elements.PRCP : elements[element!];
    if (known === undefined || left.has(element!)) {
      others.add(element!);
      continue;
    }
    const tenths = Number(parts[6]);
    if (tenths === -9999) continue;
    const value = tenths / 10;
    if (element === ofSeveralDays) flag(flags, day, 'rainMm', value, 'accumulated', true);
    else if ((parts[8] ?? '').replace(/["\s]/g, '') !== '')
      flag(flags, day, known.as, value, 'quality-flag', true);
    else {
      used.add(element!);
      dayMet(days, day)[known.as] = value;
    }
  }
  if (days.size === 0) {
    return issue('no-values', null, [...others].join(', '), 'values of TMAX, TMIN or PRCP', 'element');
  }
  const record = recordOfDays(days);
  checkDays(record, flags);
  const columns = [...used].map((column): FoundColumn => ({ column, ...elements[column]! }));
  return {
    ok: true,
    found: {
      file,
      format: 'ghcn-daily-table',
      encoding,
      station: { name: station, latitudeDeg: null, longitudeDeg: null, elevationM: null },
      otherStations: [...stations].filter((name) => name !== station),
      typicalYear: false,
      timeBase: 'as-printed',
      dateOrder: null,
      columns,
      unused: [...others],
      missingCodes: [],
      record,
      daysWithRow: days.size,
      ...flags,
    },
  };
}

export const ghcnElements: WeatherFormatReader = {
  format: 'ghcn-daily-table',
  knows: (text) => {
    const first = firstLineOf(text);
    return row.test(first) || /^"?(?:STATION|ID)"?,"?DATE"?,"?ELEMENT"?,"?(?:DATA_)?VALUE"?/i.test(first);
  },
  read,
};
