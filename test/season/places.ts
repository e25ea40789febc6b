import { isLand, type LandMask } from '../../packages/data/src/index.ts';
import { loadLandMask, readClimateNodes } from '../../packages/data/src/node.ts';
import {
  type ClimateNodes,
  type ClimatePoint,
  climateAt,
  coverageKm,
  landWarmingSinceNormalsC,
  type MonthlyClimate,
  warmed,
} from '../../packages/engine/src/index.ts';

let nodes: ClimateNodes | null = null;
let mask: LandMask | null = null;

/** Today's climate of a point, as the command line takes it. */
export function climateOf(
  latitudeDeg: number,
  longitudeDeg: number,
  elevationM: number | null = null,
): ClimatePoint {
  nodes ??= readClimateNodes();
  return warmed(climateAt(nodes, latitudeDeg, longitudeDeg, elevationM), landWarmingSinceNormalsC);
}

/** Land that the program answers for: in the mask and within reach of the climate's nodes. */
export function isCovered(latitudeDeg: number, longitudeDeg: number): boolean {
  mask ??= loadLandMask();
  return (
    isLand(mask, latitudeDeg, longitudeDeg) &&
    climateOf(latitudeDeg, longitudeDeg).nearestNodeKm <= coverageKm
  );
}

/** A made-up climate without seasons in its weather; only its days change in length. */
export function uniformClimate(tempMeanC: number, tempRangeC: number, latitudeDeg = 40): MonthlyClimate {
  const every = (value: number) => new Float64Array(12).fill(value);
  return {
    latitudeDeg,
    longitudeDeg: 0,
    elevationM: 50,
    tempMeanC: every(tempMeanC),
    tempRangeC: every(tempRangeC),
    rainMm: every(50),
    wetDays: every(10),
    relativeHumidityPct: every(70),
    sunshinePct: every(50),
    wind10mMs: every(3),
    frostNights: every(0),
    minTempSdC: every(3),
  };
}
