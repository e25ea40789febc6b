import { ofAddresses } from './addresses.ts';
import type { Attack } from './attack.ts';
import { ofTables } from './batch-tables.ts';
import { ofCommandLines } from './command-lines.ts';
import { ofGardens } from './garden-files.ts';
import { ofNames } from './spoken-names.ts';
import { ofWeatherFiles } from './weather-files.ts';
import { ofWeather } from './weather-tables.ts';

/** Every class of hostile input; their shares come to a hundred. */
export const attacks: readonly Attack[] = [
  ofCommandLines,
  ofTables,
  ofGardens,
  ofWeather,
  ofWeatherFiles,
  ofAddresses,
  ofNames,
];
