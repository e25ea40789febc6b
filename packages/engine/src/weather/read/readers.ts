import { epw } from './epw.ts';
import type { WeatherFormat, WeatherFormatReader } from './found.ts';
import { ghcnDailyFixed } from './ghcn-daily-fixed.ts';
import { gsodFixed } from './gsod-fixed.ts';
import { nasaPowerJson } from './nasa-power-json.ts';
import { openMeteoJson } from './open-meteo-json.ts';
import { ownDailyTable } from './own-daily-table.ts';
import { tableReaders } from './table/readers.ts';
import { tmy3 } from './tmy3.ts';

/** Every format that is known, those first that say most plainly what they are. */
const readers: readonly WeatherFormatReader[] = [
  epw,
  tmy3,
  ghcnDailyFixed,
  gsodFixed,
  nasaPowerJson,
  openMeteoJson,
  ownDailyTable,
  ...tableReaders,
];

/** Which reader knows a file by its content; null: none. */
export function readerOf(text: string): WeatherFormatReader | null {
  return readers.find((reader) => reader.knows(text)) ?? null;
}

/** The format a text is in, by its content; null where none fits. */
export function weatherFormatOf(text: string): WeatherFormat | null {
  return readerOf(text)?.format ?? null;
}
