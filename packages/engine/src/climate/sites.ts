import { degreesToRadians } from '../math/index.ts';

/** Mean radius of the Earth, km (IUGG R1, 6371.0088, rounded). */
export const earthRadiusKm = 6371;

/** Points with known values. Positions are chords in km, so that neither date line nor poles are special. */
export type Sites = {
  count: number;
  xKm: Float64Array;
  yKm: Float64Array;
  zKm: Float64Array;
  elevationM: Float64Array;
};

/** A point in space, km from the centre of the Earth, with its elevation, m. */
export type Position = { xKm: number; yKm: number; zKm: number; elevationM: number };

/** The point in space of a latitude and longitude, degrees, on a sphere; elevation in m. */
export function positionAt(latitudeDeg: number, longitudeDeg: number, elevationM: number): Position {
  const latitude = latitudeDeg * degreesToRadians;
  const longitude = longitudeDeg * degreesToRadians;
  return {
    xKm: earthRadiusKm * Math.cos(latitude) * Math.cos(longitude),
    yKm: earthRadiusKm * Math.cos(latitude) * Math.sin(longitude),
    zKm: earthRadiusKm * Math.sin(latitude),
    elevationM,
  };
}

/** Many of them, in columns; degrees and m. */
export function sitesAt(
  latitudeDeg: ArrayLike<number>,
  longitudeDeg: ArrayLike<number>,
  elevationM: ArrayLike<number>,
): Sites {
  const count = latitudeDeg.length;
  const sites: Sites = {
    count,
    xKm: new Float64Array(count),
    yKm: new Float64Array(count),
    zKm: new Float64Array(count),
    elevationM: Float64Array.from(elevationM),
  };
  for (let i = 0; i < count; i++) {
    const at = positionAt(latitudeDeg[i], longitudeDeg[i], 0);
    sites.xKm[i] = at.xKm;
    sites.yKm[i] = at.yKm;
    sites.zKm[i] = at.zKm;
  }
  return sites;
}

/** Straight line through the Earth, squared, km²; elevation left out. */
export function chordSquared(sites: Sites, i: number, at: Position): number {
  const dx = sites.xKm[i] - at.xKm;
  const dy = sites.yKm[i] - at.yKm;
  const dz = sites.zKm[i] - at.zKm;
  return dx * dx + dy * dy + dz * dz;
}

/** Distance on the ground of a chord, km. */
export function groundKm(chordKm: number): number {
  return 2 * earthRadiusKm * Math.asin(Math.min(1, chordKm / (2 * earthRadiusKm)));
}
