import {
  blendedClimate,
  type ClimateNodes,
  climateFields,
  type FittedClimate,
  landWarmingSinceNormalsC,
  type MonthlyClimate,
  minTempSd,
  warmed,
} from '../climate/index.ts';

/** Latitudes told of, whole degrees from the equator. */
export const lastLatitude = 70;
/** How much warmer or colder than usual for its latitude a made-up place may be, °C. */
export const mostWarmerC = 8;

/**
 * The middling climate of low ground at each whole degree from the equator, as north of it: months of the south are turned
 * by half a year. Flat, so that it travels between threads in one piece.
 */
export type LatitudeClimates = {
  /** Degree after degree the fields of `climateFields`, twelve months each. */
  months: Float64Array;
  /** Mean height of the points of each degree, m. */
  elevationM: Float64Array;
};

/** Points up to here are low ground, m: the height of a place would cool it as warmth does, and the lesson moves one at a time. */
export const lowM = 500;
/** Points this far north or south of a degree have a part in it, the less the farther off, degrees. */
const reachDeg = 5;
const fieldMonths = climateFields.length * 12;

/**
 * Means over the low points of our climatology around each degree, of both hemispheres: no land is one latitude's, so this
 * is nowhere in particular, and every month of it lies inside the range of the points it is made of.
 */
export function latitudeClimates(nodes: ClimateNodes): LatitudeClimates {
  const months = new Float64Array((lastLatitude + 1) * fieldMonths);
  const elevationM = new Float64Array(lastLatitude + 1);
  for (let degree = 0; degree <= lastLatitude; degree++) {
    const north = around(nodes, degree, 1);
    const south = around(nodes, degree, -1);
    const sum = north.sum + south.sum;
    for (const { weights, sum: part, meanM, turn } of [north, south]) {
      if (part === 0) continue;
      const share = part / sum;
      const climate = blendedClimate(nodes, weights, {
        latitudeDeg: degree,
        longitudeDeg: 0,
        elevationM: meanM,
      });
      elevationM[degree] += share * meanM;
      climateFields.forEach((field, f) => {
        for (let month = 0; month < 12; month++)
          months[degree * fieldMonths + f * 12 + month] += share * climate[field][(month + turn) % 12];
      });
    }
  }
  return { months, elevationM };
}

/** The low points around a degree on one side of the equator, with weights that fall off to nothing at their reach. */
function around(nodes: ClimateNodes, degree: number, side: 1 | -1) {
  const site: number[] = [];
  const weight: number[] = [];
  for (let i = 0; i < nodes.count; i++) {
    const away = Math.abs(side * nodes.latitudeDeg[i] - degree);
    // the equator belongs to both sides
    if (nodes.elevationM[i] > lowM || away >= reachDeg || side * nodes.latitudeDeg[i] < 0) continue;
    site.push(i);
    weight.push(1 - (away / reachDeg) ** 2);
  }
  const sum = weight.reduce((a, b) => a + b, 0);
  const weights = {
    site: Int32Array.from(site),
    weight: Float64Array.from(weight, (one) => one / sum),
  };
  const meanM = site.reduce((height, i, at) => height + weights.weight[at] * nodes.elevationM[i], 0);
  return { weights, sum, meanM, turn: side === 1 ? 0 : 6 };
}

/**
 * A made-up place: the sun of the latitude, the middling climate of low ground there, and every month so much warmer.
 *
 * @param latitudeDeg whole degrees, −70…70; below 0 the months are those of the south
 * @param warmerC warmer than usual there nowadays, −8…8 °C
 * @throws RangeError naming a value outside these limits
 */
export function latitudeClimate(
  climates: LatitudeClimates,
  latitudeDeg: number,
  warmerC: number,
): MonthlyClimate {
  if (!Number.isInteger(latitudeDeg) || Math.abs(latitudeDeg) > lastLatitude)
    throw new RangeError(
      `latitude ${latitudeDeg}: expected whole degrees, −${lastLatitude} to ${lastLatitude}`,
    );
  if (!(Math.abs(warmerC) <= mostWarmerC))
    throw new RangeError(`warmer by ${warmerC}: expected −${mostWarmerC} to ${mostWarmerC} °C`);
  const degree = Math.abs(latitudeDeg);
  const turn = latitudeDeg < 0 ? 6 : 0;
  const climate = {
    latitudeDeg,
    longitudeDeg: 0,
    elevationM: climates.elevationM[degree],
  } as FittedClimate;
  climateFields.forEach((field, f) => {
    const from = degree * fieldMonths + f * 12;
    climate[field] = Float64Array.from(
      { length: 12 },
      (_, month) => climates.months[from + ((month + turn) % 12)],
    );
  });
  return warmed({ ...climate, minTempSdC: minTempSd(climate) }, landWarmingSinceNormalsC + warmerC);
}
