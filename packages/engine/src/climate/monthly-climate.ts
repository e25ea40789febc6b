/** Monthly climate of one point on land: twelve values a field, January first. */
export type MonthlyClimate = {
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number;
  /** Mean temperature, °C. */
  tempMeanC: Float64Array;
  /** Mean daily maximum minus mean daily minimum, °C. */
  tempRangeC: Float64Array;
  /** Rain and melted snow, mm a month. */
  rainMm: Float64Array;
  /** Days with at least 0.1 mm, a month. */
  wetDays: Float64Array;
  /** Mean relative humidity, %. */
  relativeHumidityPct: Float64Array;
  /** Sunshine, % of the longest possible. */
  sunshinePct: Float64Array;
  /** Mean wind at 10 m, m/s. */
  wind10mMs: Float64Array;
  /** Nights below 0 °C, a month. */
  frostNights: Float64Array;
  /** Standard deviation of the daily minimum about its monthly mean, °C, all years together. */
  minTempSdC: Float64Array;
};

/** What the fitted nodes give; the spread of the minimum is derived from it. */
export type FittedClimate = Omit<MonthlyClimate, 'minTempSdC'>;

/** Climate of a point on land, with how far it can be trusted. */
export type ClimatePoint = MonthlyClimate & {
  /** Distance to the nearest node on the ground, km. Beyond {@link coverageKm} the place is not covered. */
  nearestNodeKm: number;
  /** Whether the elevation was given or is the nearest node's. */
  elevationFrom: 'given' | 'nearest-node';
  /** Highest minus lowest node within {@link elevationSpreadKm}, m; 0 with fewer than two nodes there. */
  nodeElevationSpreadM: number;
};

/** A place farther from every node than this is not covered, km. */
export const coverageKm = 150;

/** Radius in which the spread of node elevations is taken, km. */
export const elevationSpreadKm = 50;

/** Without a given elevation, a spread above this deserves a warning, m. */
export const elevationSpreadWarningM = 300;
