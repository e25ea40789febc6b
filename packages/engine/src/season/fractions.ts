/**
 * What a field holds before its value is known. V8 keeps fields of small whole numbers and fields of fractions apart: when
 * the first fraction comes where a whole number stood, the object gets another shape and the daily loop compiled for
 * the old one is thrown away. A field that begins with this holds fractions from the first.
 */
export const unknownFraction = Number.NaN;

/** Makes every number of a record a field of fractions, whatever it is now; in place. */
export function holdFractions(record: Record<string, unknown>): void {
  for (const [key, value] of Object.entries(record)) {
    if (typeof value !== 'number') continue;
    record[key] = unknownFraction;
    record[key] = value;
  }
}
