import type { WeatherFormatReader } from '../../found.ts';
import type { TableProfile } from '../profile.ts';
import type { Judge } from '../read-rows.ts';
import { readTable } from '../read-table.ts';
import { headOf } from './header-line.ts';

/** E: estimated. M is an empty cell, T rain too little to measure. */
const estimated: Judge = (mark) => (mark.trim() === 'E' ? { why: 'quality-flag', leftOut: false } : null);

const profile: TableProfile = {
  format: 'environment-canada-daily',
  // hours are those of local standard time all the year
  timeBase: 'local-standard',
  judges: (names) =>
    names.flatMap(({ words }, mark) => {
      if (mark === 0 || !/ (?:flag|indicateur) /.test(words)) return [];
      return [{ value: mark - 1, mark, judge: estimated }];
    }),
};

/** Days and hours of Canada's climate archive, in English or French. */
export const environmentCanada: WeatherFormatReader = {
  format: 'environment-canada-daily',
  knows: (text) => {
    const head = headOf(text);
    return (
      /Longitude \(x\)|Climate I(?:D|dentifier)|ID climatologique|Identificateur climatique/.test(head) &&
      /(?:Max Temp|Temp max\.?|Total Precip|Temp) ?\(|Temp\. max\./.test(head)
    );
  },
  read: (file, corrections, place) => readTable(file, corrections, place, profile),
};
