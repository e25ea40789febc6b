/**
 * Numbers that services write where nothing was measured (common practice, no source). Most are beyond what can be;
 * the others count as codes only where they come again and again.
 */
const codes: ReadonlySet<number> = new Set([
  -9.99, -99, -99.9, -99.99, 99.99, -999, 999, -999.9, 999.9, -9999, 9999, -9999.9, 9999.9,
]);

/** A code for “not measured” that was met and left out: in which column, and on how many days. */
export type MissingCode = { column: string; code: number; days: number };

/** A believable value may be met by chance on this many days, or on this share of them. */
const chanceDays = 2;
const chanceShare = 0.01;

/** Codes among the values of one quantity, each with how often it stands there. */
export function missingCodesIn(
  values: ArrayLike<number> & Iterable<number>,
  isBelievable: (value: number) => boolean,
): ReadonlyMap<number, number> {
  const seen = new Map<number, number>();
  for (const value of values) if (codes.has(value)) seen.set(value, (seen.get(value) ?? 0) + 1);
  const byChance = Math.max(chanceDays, chanceShare * values.length);
  for (const [value, times] of seen) {
    if (isBelievable(value) && times <= byChance) seen.delete(value);
  }
  return seen;
}
