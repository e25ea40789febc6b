import type { WeatherFormatReader } from '../../found.ts';
import type { TableProfile } from '../profile.ts';
import type { Judge } from '../read-rows.ts';
import { readTable } from '../read-table.ts';
import { headOf } from './header-line.ts';

/** The amount of several days, told on the last of them. */
const accumulated: Judge = (mark) => (Number(mark) > 1 ? { why: 'accumulated', leftOut: false } : null);

const profile: TableProfile = {
  format: 'bom-daily',
  timeBase: 'as-printed',
  judges: (names) =>
    names.flatMap(({ words }, mark) =>
      / period over which | days of accumulation /.test(words) && mark > 0
        ? [{ value: mark - 1, mark, judge: accumulated }]
        : [],
    ),
};

/** Daily tables of Australia's Bureau of Meteorology, a variable a file. */
export const bomDaily: WeatherFormatReader = {
  format: 'bom-daily',
  knows: (text) => /^\s*"?Product code"?,\s*"?(?:Bureau of Meteorology )?station number/i.test(headOf(text)),
  read: (file, corrections, place) => readTable(file, corrections, place, profile),
};
