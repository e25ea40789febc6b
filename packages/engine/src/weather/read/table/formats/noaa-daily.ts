import { recordFields } from '../../../daily-record.ts';
import { cutRecord } from '../../../usable-record.ts';
import type { FoundFile, WeatherFormatReader } from '../../found.ts';
import type { UnitName } from '../../units.ts';
import { sortedSample } from '../guess-units.ts';
import type { HeaderName } from '../header-name.ts';
import type { Meaning } from '../meaning.ts';
import type { TableProfile, ValuesSeen } from '../profile.ts';
import type { Judge } from '../read-rows.ts';
import { readTable } from '../read-table.ts';
import { namesIn } from './header-line.ts';

const quantities: Record<string, Meaning> = {
  ' tmax ': { as: 'tempMaxC', rank: 9, unit: null },
  ' tmin ': { as: 'tempMinC', rank: 9, unit: null },
  ' tavg ': { as: 'tempC', rank: 9, unit: null },
  ' prcp ': { as: 'rainMm', rank: 9, unit: null },
};

/** Flags of measurement, quality and source, with commas between; one of quality says that a value failed a check. */
const judge: Judge = (mark) => (mark.split(',')[1]?.trim() ? { why: 'quality-flag', leftOut: true } : null);

/** Columns of marks, each beside the column of values that it is named for. */
export function judgesNamed(names: readonly HeaderName[], behind: string, judge: Judge) {
  return names.flatMap(({ words }, mark) => {
    if (!words.endsWith(` ${behind} `)) return [];
    const value = names.findIndex((name) => name.words === words.slice(0, -behind.length - 1));
    return value < 0 ? [] : [{ value, mark, judge }];
  });
}

/** Columns of quality all named alike, each behind the value and the flag of measurement that it goes with. */
const failed: Judge = (mark) => (mark.trim() === '' ? null : { why: 'quality-flag', leftOut: true });
function judgesBehind(names: readonly HeaderName[]) {
  return names.flatMap(({ words }, mark) => {
    const value = mark - 2;
    const isOfValue = words === ' quality flag ' && names[value] && quantities[names[value].words];
    return isOfValue ? [{ value, mark, judge: failed }] : [];
  });
}

/**
 * Units that the file never says. Fahrenheit comes in whole degrees with hundredths of inches, Celsius with tenths
 * beside mm, and the tenths of the archive are all whole numbers.
 */
function units(columns: readonly ValuesSeen[]): { temperature: UnitName; rain: UnitName } {
  const isRain = ({ words }: ValuesSeen) => words === ' prcp ';
  const hasDecimals = (seen: readonly ValuesSeen[]) => seen.some(({ hasDecimals }) => hasDecimals);
  const rainColumns = columns.filter(isRain);
  const temperatureColumns = columns.filter((column) => !isRain(column));
  const temperatures = sortedSample(temperatureColumns);
  const rain = sortedSample(rainColumns);
  if (temperatures.length === 0) {
    if (!hasDecimals(rainColumns)) return { temperature: '0.1 °C', rain: '0.1 mm' };
    // inches have two decimals, mm one
    const isInches = rain.some((value) => Math.abs(value * 10 - Math.round(value * 10)) > 1e-6);
    return isInches ? { temperature: '°F', rain: 'in' } : { temperature: '°C', rain: 'mm' };
  }
  if (hasDecimals(temperatureColumns)) return { temperature: '°C', rain: 'mm' };
  const quantile = (share: number) => temperatures[Math.floor(share * (temperatures.length - 1))]!;
  const isTenths =
    quantile(0.98) > 135 || quantile(0.02) < -75 || (!hasDecimals(rainColumns) && rain.some((mm) => mm > 15));
  return isTenths ? { temperature: '0.1 °C', rain: '0.1 mm' } : { temperature: '°F', rain: 'in' };
}

const profile: TableProfile = {
  format: 'ncei-daily-summaries',
  timeBase: 'as-printed',
  meaning: ({ words }) => quantities[words] ?? null,
  judges: (names) => [...judgesNamed(names, 'attributes', judge), ...judgesBehind(names)],
  units,
};

/** Daily summaries as NCEI gives them for stations of GHCN-Daily, in units of choice, and the archive's own tables. */
export const noaaDaily: WeatherFormatReader = {
  format: 'ncei-daily-summaries',
  knows: (text) => {
    const names = namesIn(text);
    return (
      names.includes('STATION') &&
      names.includes('DATE') &&
      ['TMAX', 'TMIN', 'PRCP', 'TAVG'].some((name) => names.includes(name))
    );
  },
  read: (file, corrections, place) => {
    const reading = readTable(file, corrections, place, profile);
    const isArchive =
      reading.ok && reading.found.columns.some(({ unit }) => unit === '0.1 °C' || unit === '0.1 mm');
    return isArchive ? { ok: true, found: asArchive(reading.found) } : reading;
  },
};

/** Rows of the archive tell of snow and more: its days are those of the three elements that are read. */
function asArchive(found: FoundFile): FoundFile {
  const { record } = found;
  const isKnown = (at: number) => recordFields.some((field) => record.known[field][at] === 1);
  const known = Array.from({ length: record.days }, (_, at) => at).filter(isKnown);
  const format = 'ghcn-daily-table';
  if (known.length === 0) return { ...found, format };
  const [first, last] = [record.firstDay + known[0]!, record.firstDay + known.at(-1)!];
  return { ...found, format, record: cutRecord(record, first, last + 1), daysWithRow: known.length };
}
