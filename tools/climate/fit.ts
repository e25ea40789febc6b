import { encodeNodes } from './encode-nodes.ts';
import { placeNodes } from './place-nodes.ts';
import { smoothToNodes } from './smooth-to-nodes.ts';
import type { Stations } from './stations.ts';

export const nodeCount = 6000;
export const placementSeed = 20270101;

export type Fit = { file: Uint8Array; largestWeights: Float64Array };

/** The whole way from stations to the climate file (unzipped). */
export function fitClimate(stations: Stations): Fit {
  const positions = placeNodes(stations, nodeCount, placementSeed);
  const { values, largestWeights } = smoothToNodes(stations, positions);
  return { file: encodeNodes(positions, values), largestWeights };
}
