import type { WeatherFormatReader } from '../../found.ts';
import type { Meaning } from '../meaning.ts';
import type { TableProfile } from '../profile.ts';
import type { Judge } from '../read-rows.ts';
import { readTable } from '../read-table.ts';
import { namesIn } from './header-line.ts';
import { judgesNamed } from './noaa-daily.ts';

const quantities: Record<string, Meaning> = {
  ' max ': { as: 'tempMaxC', rank: 9, unit: '°F' },
  ' min ': { as: 'tempMinC', rank: 9, unit: '°F' },
  ' temp ': { as: 'tempC', rank: 9, unit: '°F' },
  ' prcp ': { as: 'rainMm', rank: 9, unit: 'in' },
};

/** I: the station gave no rain at all, and 0.00 is printed. */
const noReport: Judge = (mark) => (mark === 'I' ? { why: 'quality-flag', leftOut: false } : null);

const profile: TableProfile = {
  format: 'gsod-table',
  timeBase: 'as-printed',
  meaning: ({ words }) => quantities[words] ?? null,
  judges: (names) => judgesNamed(names, 'attributes', noReport),
};

/** Global Surface Summary of the Day as NCEI gives it (NOAA, readme of the data set): °F and inches, nowhere said. */
export const gsodTable: WeatherFormatReader = {
  format: 'gsod-table',
  knows: (text) => {
    const names = namesIn(text);
    return ['STATION', 'DATE', 'MAX', 'MIN', 'PRCP', 'TEMP'].every((name) => names.includes(name));
  },
  read: (file, corrections, place) => readTable(file, corrections, place, profile),
};
