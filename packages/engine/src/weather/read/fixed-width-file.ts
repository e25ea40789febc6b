import { type DaysMet, recordOfDays } from './days-met.ts';
import { checkDays, type Flags } from './flagged.ts';
import type { FoundColumn, FoundFile, WeatherFormat, WeatherText } from './found.ts';

/** What was met in the lines of a file of fixed width. */
export type LinesMet = {
  days: DaysMet;
  flags: Flags;
  /** In the order in which they were met: the file is read for the first. */
  stations: Iterable<string>;
  columns: FoundColumn[];
  unused: string[];
};

export function fixedWidthFile(
  { file, encoding }: WeatherText,
  format: WeatherFormat,
  { days, flags, stations, columns, unused }: LinesMet,
): FoundFile {
  const record = recordOfDays(days);
  checkDays(record, flags);
  const [name = null, ...otherStations] = stations;
  return {
    file,
    format,
    encoding,
    station: { name, latitudeDeg: null, longitudeDeg: null, elevationM: null },
    otherStations,
    typicalYear: false,
    timeBase: 'as-printed',
    dateOrder: null,
    columns,
    missingCodes: [],
    unused,
    record,
    daysWithRow: days.size,
    ...flags,
  };
}
