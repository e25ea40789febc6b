import { refuse } from '../refusal/refusal.ts';
import { readNumber } from './number.ts';

export type Point = { latitudeDeg: number; longitudeDeg: number; elevationM: number | null };

/** Shore of the Dead Sea; the highest fields. */
export const lowestM = -430;
export const highestM = 6000;

/** `LAT,LON[,ELEV]`, or with decimal commas `LAT;LON[;ELEV]`. Degrees, north and east positive; metres. */
export function parsePoint(text: string): Point {
  const field = '--at';
  const parts = text.split(text.includes(';') ? ';' : ',');
  const numbers = parts.map(readNumber);
  if (parts.length < 2 || parts.length > 3 || numbers.includes(null)) {
    throw refuse('at-form', { field, values: { value: text }, expected: 'LAT,LON[,ELEV]' });
  }
  const [latitude, longitude, elevation] = numbers as number[];
  const inside = (value: number, low: number, high: number) => value >= low && value <= high;
  if (!inside(latitude, -90, 90)) {
    throw refuse('latitude-range', { field, values: { value: text, latitude: String(latitude) } });
  }
  if (!inside(longitude, -180, 180)) {
    throw refuse('longitude-range', { field, values: { value: text, longitude: String(longitude) } });
  }
  if (elevation !== undefined && !inside(elevation, lowestM, highestM)) {
    throw refuse('elevation-range', { field, values: { value: text, elevation: String(elevation) } });
  }
  return { latitudeDeg: latitude, longitudeDeg: longitude, elevationM: elevation ?? null };
}
