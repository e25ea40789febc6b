/** Mean radius of the Earth (IUGG). */
export const EARTH_RADIUS_KM = 6371.0088;

/** Radians in a degree. */
export const RADIANS = Math.PI / 180;

/** Great-circle distance by the haversine formula (R. W. Sinnott, Sky & Telescope 68, 1984, p. 159; memory). */
export function greatCircleKm(latA: number, lonA: number, latB: number, lonB: number): number {
  const sinLat = Math.sin(((latB - latA) * RADIANS) / 2);
  const sinLon = Math.sin(((lonB - lonA) * RADIANS) / 2);
  const h = sinLat ** 2 + Math.cos(latA * RADIANS) * Math.cos(latB * RADIANS) * sinLon ** 2;
  return 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(h)));
}
