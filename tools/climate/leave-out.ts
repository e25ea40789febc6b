import {
  type ClimateField,
  climateAt,
  climateFields,
  decodeClimateNodes,
  lapseCPerM,
  siteWeights,
} from '../../packages/engine/src/climate/index.ts';
import { randomSource } from '../../packages/engine/src/math/index.ts';
import { fitClimate } from './fit.ts';
import { pickStations, type Stations } from './stations.ts';

export const leaveOutSeed = 7;
export const leaveOutGroups = 10;

export type LeaveOut = {
  /** Side of the blocks left out together, degrees; null: single stations. */
  blockDeg: number | null;
  /** How many of the ten groups were left out and scored in turn. */
  groups: number;
  /** Station row of each scored station. */
  rows: number[];
  /** Fitted minus station, twelve a scored station. */
  errors: Record<ClimateField, Float64Array>;
  /** The same for the naive way, mean temperature only. */
  naiveTempErrors: Float64Array;
};

/**
 * Deals stations, or blocks of them, at random into ten groups; leaves out one group after the other, runs the whole
 * fit without it (placing, smoothing, rounding into the file) and asks the decoded file for the stations left out.
 */
export function leaveOut(stations: Stations, blockDeg: number | null, groups: number): LeaveOut {
  const groupOf = dealGroups(stations, blockDeg);
  const rows: number[] = [];
  const errors = {} as Record<ClimateField, number[]>;
  for (const field of climateFields) errors[field] = [];
  const naive: number[] = [];
  for (let group = 0; group < groups; group++) {
    const all = Array.from({ length: stations.count }, (_, row) => row);
    const kept = pickStations(
      stations,
      all.filter((row) => groupOf[row] !== group),
    );
    const nodes = decodeClimateNodes(fitClimate(kept).file);
    for (const row of all.filter((candidate) => groupOf[candidate] === group)) {
      rows.push(row);
      const climate = climateAt(
        nodes,
        stations.latitudeDeg[row],
        stations.longitudeDeg[row],
        stations.elevationM[row],
      );
      const plain = naiveTempMean(kept, stations, row);
      for (let m = 0; m < 12; m++) {
        for (const field of climateFields)
          errors[field].push(climate[field][m] - stations.values[field][row * 12 + m]);
        naive.push(plain[m] - stations.values.tempMeanC[row * 12 + m]);
      }
    }
  }
  const typed = {} as LeaveOut['errors'];
  for (const field of climateFields) typed[field] = Float64Array.from(errors[field]);
  return { blockDeg, groups, rows, errors: typed, naiveTempErrors: Float64Array.from(naive) };
}

function dealGroups(stations: Stations, blockDeg: number | null): Int32Array {
  const random = randomSource(leaveOutSeed);
  const groupOfBlock = new Map<string, number>();
  return Int32Array.from({ length: stations.count }, (_, row) => {
    const block =
      blockDeg === null
        ? String(row)
        : `${Math.floor(stations.latitudeDeg[row] / blockDeg)} ${Math.floor(stations.longitudeDeg[row] / blockDeg)}`;
    if (!groupOfBlock.has(block)) groupOfBlock.set(block, Math.floor(random.uniform() * leaveOutGroups));
    return groupOfBlock.get(block)!;
  });
}

/** Inverse-distance mean of the 8 nearest stations, brought to the elevation by the lapse: the naive way to compare with. */
function naiveTempMean(kept: Stations, stations: Stations, row: number): Float64Array {
  const at = {
    xKm: stations.xKm[row],
    yKm: stations.yKm[row],
    zKm: stations.zKm[row],
    elevationM: stations.elevationM[row],
  };
  const { site } = siteWeights(kept, at, { neighbours: 8, nugget: 1 });
  const months = new Float64Array(12);
  let sum = 0;
  for (const i of site) {
    const km = Math.hypot(kept.xKm[i] - at.xKm, kept.yKm[i] - at.yKm, kept.zKm[i] - at.zKm);
    const up = kept.elevationM[i] - at.elevationM;
    const weight = 1 / ((km * km + 1) * (1 + (up / 300) ** 2));
    sum += weight;
    for (let m = 0; m < 12; m++) {
      months[m] = months[m] + weight * (kept.values.tempMeanC[i * 12 + m] + lapseCPerM * up);
    }
  }
  return months.map((value) => value / sum);
}
