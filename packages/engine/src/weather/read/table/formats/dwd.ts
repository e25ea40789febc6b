import type { WeatherFormatReader } from '../../found.ts';
import type { Meaning } from '../meaning.ts';
import type { TableProfile } from '../profile.ts';
import { readTable } from '../read-table.ts';
import { headOf } from './header-line.ts';

const quantities: Record<string, Meaning> = {
  TXK: { as: 'tempMaxC', rank: 9, unit: '°C' },
  TNK: { as: 'tempMinC', rank: 9, unit: '°C' },
  TMK: { as: 'tempC', rank: 9, unit: '°C' },
  RSK: { as: 'rainMm', rank: 9, unit: 'mm' },
  RS: { as: 'rainMm', rank: 9, unit: 'mm' },
  FG_STRAHL: { as: 'solarMJ', rank: 9, unit: 'J/cm²' },
  // hours
  TT_TU: { as: 'tempC', rank: 9, unit: '°C' },
  R1: { as: 'rainMm', rank: 9, unit: 'mm' },
  FG_LBERG: { as: 'solarMJ', rank: 9, unit: 'J/cm²' },
  // ten minutes
  TT_10: { as: 'tempC', rank: 9, unit: '°C' },
  RWS_10: { as: 'rainMm', rank: 9, unit: 'mm' },
  GS_10: { as: 'solarMJ', rank: 9, unit: 'J/cm²' },
};

const profile: TableProfile = {
  format: 'dwd-daily',
  // hours and ten minutes; days say no time
  timeBase: 'utc',
  meaning: ({ column }) => (Object.hasOwn(quantities, column) ? quantities[column]! : null),
};

/** Tables of the climate data centre of Germany's weather service, by the names in their column descriptions. */
export const dwd: WeatherFormatReader = {
  format: 'dwd-daily',
  knows: (text) => /^\s*STATIONS_ID\s*;\s*MESS_DATUM/.test(headOf(text)),
  read: (file, corrections, place) => readTable(file, corrections, place, profile),
};
