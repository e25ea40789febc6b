import { readPlanes } from './byte-planes.ts';
import { countryForms } from './countries.ts';
import { foldName } from './fold-name.ts';
import { type Gazetteer, latitudeAt, longitudeAt } from './gazetteer.ts';

/** A country by its towns. Degrees; where east lies west of west the box crosses the date line. */
export type CountryBox = {
  /** ISO alpha-2 code. */
  country: string;
  southDeg: number;
  westDeg: number;
  northDeg: number;
  eastDeg: number;
};

/** The country so called, by name, short form or code, with the box that holds its towns; null where none is. */
export function countryBox(gazetteer: Gazetteer, called: string): CountryBox | null {
  const folded = foldName(called);
  const codes = new Set(gazetteer.parts.flatMap(({ areas }) => areas.map(([code]) => code)));
  const country = [...codes].find((code) => countryForms(code).includes(folded));
  if (country === undefined) return null;
  const latitudes: number[] = [];
  const longitudes: number[] = [];
  for (const part of gazetteer.parts) {
    const isThere = part.areas.map(([code]) => code === country);
    for (let row = 0; row < part.count; row++) {
      if (!isThere[readPlanes(part.area, part.count, row)]) continue;
      latitudes.push(latitudeAt(part, row));
      longitudes.push(longitudeAt(part, row));
    }
  }
  const range = (values: readonly number[]) =>
    values.reduce(([low, high], value) => [Math.min(low, value), Math.max(high, value)], [90, -90]);
  const [southDeg, northDeg] = range(latitudes);
  return { country, southDeg, northDeg, ...aroundWidestGap(longitudes) };
}

/** Towns lie on both sides of the date line where that leaves the wider stretch of the Earth without any. */
function aroundWidestGap(longitudes: readonly number[]): { westDeg: number; eastDeg: number } {
  const sorted = longitudes.toSorted((a, b) => a - b);
  let [westDeg, eastDeg] = [sorted[0], sorted[sorted.length - 1]];
  let widest = westDeg + 360 - eastDeg;
  for (let at = 1; at < sorted.length; at++) {
    const gap = sorted[at] - sorted[at - 1];
    if (gap <= widest) continue;
    widest = gap;
    [westDeg, eastDeg] = [sorted[at], sorted[at - 1]];
  }
  return { westDeg, eastDeg };
}
