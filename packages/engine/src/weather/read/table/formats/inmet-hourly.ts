import type { WeatherFormatReader } from '../../found.ts';
import type { Meaning } from '../meaning.ts';
import type { TableProfile } from '../profile.ts';
import { readTable } from '../read-table.ts';
import { headOf } from './header-line.ts';

const profile: TableProfile = {
  format: 'inmet-hourly',
  timeBase: 'utc',
  meaning: ({ words, unit }): Meaning | null | undefined => {
    // of the hour the dry bulb alone: the highest and lowest of the hour before are of another measure
    if (/ bulbo seco | temp ins /.test(words)) return { as: 'tempC', rank: 9, unit: unit ?? '°C' };
    return / na hora ant| orvalho /.test(words) ? null : undefined;
  },
};

/** Automatic stations of Brazil's institute of meteorology; letters may be lost. */
export const inmetHourly: WeatherFormatReader = {
  format: 'inmet-hourly',
  knows: (text) => {
    const head = headOf(text);
    return (
      /CODIGO \(WMO\)|Codigo Estacao|BULBO SECO|NA HORA ANT|Temp\. Ins\./i.test(head) &&
      /HORA|TEMPERATURA/i.test(head)
    );
  },
  read: (file, corrections, place) => readTable(file, corrections, place, profile),
};
