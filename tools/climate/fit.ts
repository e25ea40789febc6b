import { dropDoubtful } from './drop-doubtful.ts';
import { encodeNodes } from './encode-nodes.ts';
import { placeNodes } from './place-nodes.ts';
import { smoothToNodes } from './smooth-to-nodes.ts';
import type { Stations } from './stations.ts';

export const nodeCount = 6000;
export const placementSeed = 20270101;

export type Fit = {
  /** The climate file, unzipped. */
  file: Uint8Array;
  /** The largest weight of a single station in each node. */
  largestWeights: Float64Array;
  /** Stations left out as faulty. */
  dropped: number;
};

/** The whole way from stations to the climate file. */
export function fitClimate(all: Stations): Fit {
  const stations = dropDoubtful(all);
  const positions = placeNodes(stations, nodeCount, placementSeed);
  const { values, largestWeights } = smoothToNodes(stations, positions);
  return { file: encodeNodes(positions, values), largestWeights, dropped: all.count - stations.count };
}
