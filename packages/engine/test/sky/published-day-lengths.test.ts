import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseDay } from '../../src/calendar/index.ts';
import { fillHoursAbove } from '../../src/sky/day-length.ts';
import { type DayLengthConvention, dayLength, daylightHoursFao } from '../../src/sky/index.ts';
import published from './published-day-lengths.json' with { type: 'json' };

type Row = (typeof published.rows)[number];

const offered: Readonly<Record<string, DayLengthConvention>> = { 'sun-up': 'sun-up', civil: 'civil' };

/** Published in conventions that are not offered; checked against the same sun at their altitude, degrees. */
const otherConventions: Readonly<Record<string, number>> = {
  'sun centre at horizon': 0,
  'nautical twilight': -12,
};

const rowsOf = (belongs: (row: Row) => boolean) => published.rows.filter(belongs);
const dayOf = (row: Row) => parseDay(row.date) ?? Number.NaN;
const label = (row: Row) =>
  `${row.place ?? row.latitudeDeg} on ${row.date}, ${row.convention}: ${row.hours} h`;

function expectWithinTolerance(row: Row, hours: number): void {
  const source = published.sources[row.source as keyof typeof published.sources];
  expect(Math.abs(hours - row.hours), `${hours} h against ${row.hours} h of ${source}`).toBeLessThanOrEqual(
    row.toleranceHours,
  );
}

describe('published day lengths', () => {
  it.each(rowsOf((row) => row.convention in offered).map((row) => [label(row), row] as const))(
    '%s',
    (_, row) => {
      const day = dayOf(row);
      expectWithinTolerance(
        row,
        dayLength(row.latitudeDeg, row.longitudeDeg, day, offered[row.convention]).hours,
      );
    },
  );

  it.each(rowsOf((row) => row.convention === 'fao').map((row) => [label(row), row] as const))(
    '%s',
    (_, row) => {
      expectWithinTolerance(row, daylightHoursFao(row.latitudeDeg, row.dayOfYear ?? Number.NaN));
    },
  );

  it.each(rowsOf((row) => row.convention in otherConventions).map((row) => [label(row), row] as const))(
    'convention not offered, same sun: %s',
    (_, row) => {
      const out = new Float64Array(1);
      const altitude = otherConventions[row.convention];
      fillHoursAbove(altitude, row.latitudeDeg, row.longitudeDeg, dayOf(row), out);
      expectWithinTolerance(row, out[0]);
    },
  );

  it('leave out no row', () => {
    const counts: Record<string, number> = {};
    for (const row of published.rows) counts[row.convention] = (counts[row.convention] ?? 0) + 1;
    expect(counts).toEqual({
      'sun-up': 49,
      civil: 30,
      fao: 5,
      'sun centre at horizon': 14,
      'nautical twilight': 9,
    });
  });
});

const shared = process.env.NECKFALL_SHARED;
describe('the shared folder', () => {
  it.skipIf(!shared)('has every published row in our fixture (needs NECKFALL_SHARED)', () => {
    type SharedRow = { lat_deg: number; date: string; hours: number; tolerance_h: number };
    const text = readFileSync(join(shared ?? '', 'data', 'daylength-checks.json'), 'utf8');
    const rows = (JSON.parse(text) as { published: SharedRow[] }).published;
    const key = (...values: unknown[]) => values.join(' ');
    const ours = published.rows.map((r) => key(r.latitudeDeg, r.date, r.hours, r.toleranceHours)).sort();
    expect(ours).toEqual(rows.map((r) => key(r.lat_deg, r.date, r.hours, r.tolerance_h)).sort());
  });
});
