/** A part of the Earth; where east lies west of west it crosses the date line. Degrees, edges included. */
export type Region = { southDeg: number; westDeg: number; northDeg: number; eastDeg: number };

export type GridPoint = { latitudeDeg: number; longitudeDeg: number };

/** All covered latitudes. */
export const wholeWorld: Region = { southDeg: -60, westDeg: -180, northDeg: 72, eastDeg: 180 };

/** Grid points of a region, by number: from north to south, in each row from west to east. */
export type Grid = {
  /** Points in all, land and sea. */
  count: number;
  /** The point of a number from 0 to `count` − 1. */
  at: (number: number) => GridPoint;
};

/**
 * The points of a region whose latitude and longitude are whole multiples of a step. A point of a step is one of half
 * that step too, so that a map fills in from coarse to fine.
 * @param stepDeg above 0
 */
export function gridOf({ southDeg, westDeg, northDeg, eastDeg }: Region, stepDeg: number): Grid {
  const toEast = eastDeg < westDeg ? eastDeg + 360 : eastDeg;
  const [top, bottom] = [wholeBelow(northDeg / stepDeg), -wholeBelow(-southDeg / stepDeg)];
  const [first, last] = [-wholeBelow(-westDeg / stepDeg), wholeBelow(toEast / stepDeg)];
  // round the whole Earth the last meridian would be the first again
  const columns = Math.max(0, Math.min(last - first + 1, wholeBelow(360 / stepDeg)));
  return {
    count: columns * Math.max(0, top - bottom + 1),
    at: (number) => ({
      latitudeDeg: rounded((top - Math.floor(number / columns)) * stepDeg),
      longitudeDeg: within((first + (number % columns)) * stepDeg),
    }),
  };
}

/** The same one after the other. */
export function* gridPoints(region: Region, stepDeg: number): Generator<GridPoint> {
  const { count, at } = gridOf(region, stepDeg);
  for (let number = 0; number < count; number++) yield at(number);
}

/** The whole number at or below, for quotients that miss a whole number by their last digits. */
function wholeBelow(quotient: number): number {
  return Math.floor(quotient + 1e-9);
}

function within(longitudeDeg: number): number {
  return rounded(longitudeDeg >= 180 ? longitudeDeg - 360 : longitudeDeg);
}

/** Multiples of a step without their last binary digits. */
function rounded(degrees: number): number {
  return Math.round(degrees * 1e6) / 1e6 + 0;
}
