import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../../src/calendar/index.ts';
import type { RecordField } from '../../../../src/weather/index.ts';
import { foundIn } from './days-read.ts';

/*
 * Files as public repositories hold them, and what they come to, counted apart from this project: see README.md and
 * truth.json beside them. Means agree within 0.005 °C and totals within 0.05 mm, as these are rounded.
 */
const shared = process.env.NECKFALL_SHARED;
const folder = shared ? join(shared, 'data', 'weather-samples') : '';
const files = shared ? readdirSync(folder).filter((name) => /\.(csv|txt)$/.test(name)) : [];
const truth = shared ? JSON.parse(readFileSync(join(folder, 'truth.json'), 'utf8')) : {};

const formats: Record<string, string> = {
  'bom_IDCJAC0009_086338_rain.csv': 'bom-daily',
  'bom_IDCJAC0010_086338_tmax.csv': 'bom-daily',
  'bom_IDCJAC0011_086338_tmin.csv': 'bom-daily',
  'derived_power_temperatura_es.csv': 'own-table',
  'dwd_kl_recent_00430_berlin_tegel.txt': 'dwd-daily',
  'eccc_daily_toronto_city_2015.csv': 'environment-canada-daily',
  'inmet_A806_florianopolis_2018_utf8.csv': 'inmet-hourly',
  'ncei_daily_sitka_2018_full.csv': 'ncei-daily-summaries',
  'openmeteo_hourly_52.55N13.41E_2025-12.csv': 'open-meteo-table',
  'station_mixedlang_2021-08.csv': 'own-table',
};

describe('published tables', () => {
  it.skipIf(!shared)('are all tried (needs NECKFALL_SHARED)', () => {
    expect(files.sort()).toEqual(Object.keys(formats).sort());
  });

  it.skipIf(!shared).each(Object.entries(formats))(
    '%s is read as %s to its truth (needs NECKFALL_SHARED)',
    (file, format) => {
      const found = foundIn(readFileSync(join(folder, file), 'utf8'));
      const { record } = found;
      const known = (field: RecordField) =>
        [...record[field]].filter((_, at) => record.known[field][at] === 1);
      const [highs, lows, rain] = [known('tempMaxC'), known('tempMinC'), known('rainMm')];
      const sum = (values: number[]) => values.reduce((total, value) => total + value, 0);
      const expected = truth[file];
      expect(found.format).toBe(format);
      expect({
        first_date: formatDay(record.firstDay),
        last_date: formatDay(record.firstDay + record.days - 1),
        days_with_a_row: found.daysWithRow,
        n_tmax: highs.length,
        n_tmin: lows.length,
        n_rain: rain.length,
        max_tmax_C: highs.length === 0 ? null : Math.round(Math.max(...highs) * 100) / 100,
        min_tmin_C: lows.length === 0 ? null : Math.round(Math.min(...lows) * 100) / 100,
      }).toEqual({
        first_date: expected.first_date,
        last_date: expected.last_date,
        days_with_a_row: expected.days_with_a_row,
        n_tmax: expected.n_tmax,
        n_tmin: expected.n_tmin,
        n_rain: expected.n_rain,
        max_tmax_C: expected.max_tmax_C,
        min_tmin_C: expected.min_tmin_C,
      });
      const near = (value: number, to: number | null, within: number) => {
        if (to !== null) expect(Math.abs(value - to)).toBeLessThanOrEqual(within);
      };
      near(sum(highs) / highs.length, expected.mean_tmax_C, 0.005);
      near(sum(lows) / lows.length, expected.mean_tmin_C, 0.005);
      near(sum(rain), expected.total_rain_mm, 0.05);
      for (const [date, values] of Object.entries<(number | null)[]>(expected.samples ?? {})) {
        const at = Array.from({ length: record.days }, (_, day) => formatDay(record.firstDay + day)).indexOf(
          date,
        );
        const fields = ['tempMaxC', 'tempMinC', 'rainMm'] as const;
        for (const [place, field] of fields.entries()) near(record[field][at]!, values[place]!, 0.006);
      }
    },
  );
});
