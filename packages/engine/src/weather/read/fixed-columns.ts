import type {
  FileReading,
  FoundColumn,
  ReadingPlace,
  WeatherCorrections,
  WeatherIssue,
  WeatherQuantity,
} from './found.ts';

/** A column that its format gives a name and a unit. */
export type FixedColumn = { column: string; as: WeatherQuantity; unit: string };

export type Refused = FileReading & { ok: false };

export function refused(
  code: WeatherIssue['code'],
  { line = null, field = '', received = '', expected }: Partial<WeatherIssue> & { expected: string },
): Refused {
  return { ok: false, issue: { code, line, field, received, expected } };
}

/** The columns of a format that says itself what they hold: a reader can leave one out, and nothing else. */
export function takenColumns<Column extends FixedColumn>(
  columns: readonly Column[],
  corrections: WeatherCorrections,
): { ok: true; taken: Column[] } | Refused {
  for (const { column, as, unit } of corrections.columns) {
    const known = columns.find((one) => one.column === column);
    if (known === undefined) {
      const expected = `one of ${columns.map((one) => one.column).join(', ')}`;
      return refused('unknown-column', { field: column, received: column, expected });
    }
    if ((as === null || as === known.as) && (unit === null || unit === known.unit)) continue;
    const expected = `${known.as}:${known.unit}, which is what a file of this kind says it is, or none`;
    const received = unit === null ? String(as) : `${as}:${unit}`;
    return refused('unknown-column', { field: column, received, expected });
  }
  const left = new Set(corrections.columns.filter(({ as }) => as === null).map(({ column }) => column));
  return { ok: true, taken: columns.filter(({ column }) => !left.has(column)) };
}

/** Those columns that gave a value, as they are told. */
export function toldColumns(columns: readonly FixedColumn[], used: ReadonlySet<string>): FoundColumn[] {
  return columns
    .filter(({ column }) => used.has(column))
    .map(({ column, as, unit }) => ({ column, as, unit }));
}

/** Whose standard time the days are made of, where the file's own is not taken. */
export function offsetAsked(
  corrections: WeatherCorrections,
  place: ReadingPlace,
): { offsetH: number; from: 'correction' | 'place' } | null {
  if (corrections.utcOffsetH !== null) return { offsetH: corrections.utcOffsetH, from: 'correction' };
  return place.utcOffsetH === null ? null : { offsetH: place.utcOffsetH, from: 'place' };
}
