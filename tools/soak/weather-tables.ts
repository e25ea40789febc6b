import { readDailyCsv } from '@neckfall/engine';
import fc from 'fast-check';
import { hostileText } from '../../packages/cli/test/fuzz/hostile.ts';
import { attack } from './attack.ts';

const columns = ['date', 'temp_min_c', 'temp_max_c', 'rain_mm', 'solar_mj_m2'];
const header = fc.oneof(
  { weight: 6, arbitrary: fc.shuffledSubarray(columns, { minLength: 3 }) },
  { weight: 1, arbitrary: fc.array(fc.oneof(fc.constantFrom(...columns), hostileText), { maxLength: 7 }) },
);
const date = fc
  .integer({ min: 0, max: 800 })
  .map((days) => new Date(Date.UTC(2024, 0, 1 + days)).toISOString().slice(0, 10));
const number = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: -300, max: 400 }).map((tenths) => String(tenths / 10)) },
  // marks of what is missing, and units that are not ours
  fc.constantFrom(
    '',
    '-9.99',
    '-99.9',
    '999',
    '-9999',
    '0',
    '500',
    '1e309',
    '0x10',
    '5,5',
    '-0',
    '9'.repeat(20_000),
  ),
  hostileText,
);
const texts = header.chain((names) =>
  fc
    .array(
      fc.tuple(
        ...names.map((name) =>
          name === 'date' ? fc.oneof({ weight: 9, arbitrary: date }, hostileText) : number,
        ),
      ),
      {
        maxLength: 8,
      },
    )
    .chain((rows) =>
      fc
        .tuple(fc.constantFrom('\n', '\r\n', '\r'), fc.constantFrom('', '\ufeff'))
        .map(([newline, mark]) => mark + [names, ...rows].map((cells) => cells.join(',')).join(newline)),
    ),
);

export const ofWeather = attack(
  'weather tables of our own: missing marks, other units, endless cells',
  10,
  texts,
  (text) => {
    const read = readDailyCsv(text);
    if (!read.ok) {
      if (read.issues.length === 0) return 'refused without a reason';
      return read.issues.every(({ line }) => line >= 1) ? null : 'an issue on no line';
    }
    const { record } = read;
    for (const values of Object.values(record))
      if (values instanceof Float64Array && values.some((one) => Math.abs(one) === Number.POSITIVE_INFINITY))
        return 'an endless value was taken';
    return null;
  },
);
