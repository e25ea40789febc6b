import type { PlaceOptions } from '../options/place-options.ts';
import { refuse } from '../refusal/refusal.ts';
import { parseNumber } from '../values/number.ts';
import { highestM, lowestM } from '../values/point.ts';
import type { Row } from './rows.ts';

/** The place of a row: a point, its elevation if given. */
export function pointOfRow({ latitude, longitude, elevation_m }: Row['cells']): PlaceOptions['asked'] {
  const point = {
    latitudeDeg: degrees(latitude, 'latitude', 90),
    longitudeDeg: degrees(longitude, 'longitude', 180),
    elevationM:
      elevation_m === undefined
        ? null
        : parseNumber(elevation_m, { field: 'elevation_m', min: lowestM, max: highestM, unit: 'm' }),
  };
  return { at: `${point.latitudeDeg}, ${point.longitudeDeg}`, point };
}

function degrees(text: string | undefined, field: string, most: number): number {
  if (text === undefined) throw refuse('row-empty', { field, values: { most } });
  return parseNumber(text, { field, min: -most, max: most, unit: 'degrees' });
}
