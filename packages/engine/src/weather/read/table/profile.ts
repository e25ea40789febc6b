import type { FoundStation, WeatherFormat } from '../found.ts';
import type { UnitName } from '../units.ts';
import type { Seen } from './guess-units.ts';
import type { HeaderName } from './header-name.ts';
import type { Meaning } from './meaning.ts';
import type { Judge } from './read-rows.ts';

/** Values of a column by the words of its name. */
export type ValuesSeen = Seen & { words: string };

/** What is known of a table beforehand, as its format is known. */
export type TableProfile = {
  format: WeatherFormat;
  /** What a column holds: null for nothing of use, undefined where its name says it well. */
  meaning?(name: HeaderName): Meaning | null | undefined;
  /** Quality columns, by the words of their names, and the column of values each of them judges. */
  judges?(names: readonly HeaderName[]): { value: number; mark: number; judge: Judge }[];
  /**
   * What stamps that tell no offset are in: UTC, the standard time of the place, or whatever it is. `local-standard`
   * takes all stamps at face value.
   */
  timeBase: 'utc' | 'local-standard' | 'as-printed';
  /** Units of columns that state none, from their values. */
  units?(columns: readonly ValuesSeen[]): { temperature: UnitName; rain: UnitName };
  station?: FoundStation;
  /** Minutes that all stamps of the file are ahead of UTC: taken as they are, unless a place is asked for. */
  fileOffsetMinutes?: number;
};

export const anyTable: TableProfile = { format: 'own-table', timeBase: 'as-printed' };
