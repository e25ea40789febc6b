import type { WeatherFormatReader } from '../found.ts';
import { anyTableReader } from './any-table.ts';
import { bomDaily } from './formats/bom-daily.ts';
import { dwd } from './formats/dwd.ts';
import { environmentCanada } from './formats/environment-canada.ts';
import { ghcnElements } from './formats/ghcn-elements.ts';
import { gsodTable } from './formats/gsod-table.ts';
import { inmetHourly } from './formats/inmet-hourly.ts';
import { nasaPowerTable } from './formats/nasa-power-table.ts';
import { noaaDaily } from './formats/noaa-daily.ts';
import { openMeteoTable } from './formats/open-meteo-table.ts';

/** Tables, those first whose format is known; the last takes any. */
export const tableReaders: readonly WeatherFormatReader[] = [
  ghcnElements,
  gsodTable,
  noaaDaily,
  nasaPowerTable,
  openMeteoTable,
  dwd,
  environmentCanada,
  bomDaily,
  inmetHourly,
  anyTableReader,
];
