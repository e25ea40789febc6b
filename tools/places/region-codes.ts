import type { CityRow } from './cities-table.ts';

/** Countries whose first-level codes in GeoNames are already the ones that people write after a town. */
const AS_WRITTEN = new Set(['US', 'GB', 'CH']);

/** GeoNames' first-level numbers (memory; checked by each capital in a test) and the codes of ISO 3166-2. */
const BY_NUMBER: Record<string, Record<string, string>> = {
  CA: numbered('01 AB,02 BC,03 MB,04 NB,05 NL,07 NS,08 ON,09 PE,10 QC,11 SK,12 YT,13 NT,14 NU'),
  AU: numbered('01 ACT,02 NSW,03 NT,04 QLD,05 SA,06 TAS,07 VIC,08 WA'),
};

function numbered(list: string): Record<string, string> {
  return Object.fromEntries(list.split(',').map((pair) => pair.split(' ')));
}

/** The code of the region in which a place lies, where people name towns by it. */
export function regionCode({ country, firstLevelCode }: CityRow): string | null {
  if (AS_WRITTEN.has(country)) return firstLevelCode;
  return BY_NUMBER[country]?.[firstLevelCode] ?? null;
}
