/** A part of the Earth; where east lies west of west it crosses the date line. Degrees, edges included. */
export type Region = { southDeg: number; westDeg: number; northDeg: number; eastDeg: number };

export type GridPoint = { latitudeDeg: number; longitudeDeg: number };

/** All covered latitudes. */
export const wholeWorld: Region = { southDeg: -60, westDeg: -180, northDeg: 72, eastDeg: 179.999_999 };

/**
 * The points of a region whose latitude and longitude are whole multiples of a step: from north to south, in each row
 * from west to east. A point of a step is one of half that step too, so that a map fills in from coarse to fine.
 * @param stepDeg above 0
 */
export function* gridPoints(region: Region, stepDeg: number): Generator<GridPoint> {
  const { southDeg, westDeg, northDeg, eastDeg } = region;
  const toEast = eastDeg < westDeg ? eastDeg + 360 : eastDeg;
  for (let row = Math.floor(northDeg / stepDeg); row * stepDeg >= southDeg; row--) {
    for (let column = Math.ceil(westDeg / stepDeg); column * stepDeg <= toEast; column++) {
      yield { latitudeDeg: rounded(row * stepDeg), longitudeDeg: within(column * stepDeg) };
    }
  }
}

function within(longitudeDeg: number): number {
  return rounded(longitudeDeg >= 180 ? longitudeDeg - 360 : longitudeDeg);
}

/** Multiples of a step without their last binary digits. */
function rounded(degrees: number): number {
  return Math.round(degrees * 1e6) / 1e6 + 0;
}
