import {
  type ClimateField,
  climateFields,
  fieldForms,
  lapseCPerM,
  lookupSettings,
  type SiteWeights,
  sitesAt,
  siteWeights,
} from '../../packages/engine/src/climate/index.ts';
import type { NodePositions } from './place-nodes.ts';
import { type Stations, siteOf } from './stations.ts';

/** Smoothing of the stations into a node: more neighbours and a larger nugget than the lookup. */
const smoothing = { neighbours: 24, nugget: 0.05 };

/** No station counts for more than this in any node. */
const largestWeight = 0.8;

export type NodeValues = {
  /** In the form the file holds (see `fieldForms`), twelve a node. */
  values: Record<ClimateField, Float64Array>;
  /** The largest weight of a single station in each node. */
  largestWeights: Float64Array;
};

/**
 * Values at the nodes, each from the 24 stations nearest in distance and elevation together. Smoothed twice: what the
 * lookup would miss at the stations after a first pass is smoothed in the same way and added ("twicing", Tukey 1977,
 * Exploratory Data Analysis, chapter 16), which gives back most of what smoothing flattens.
 */
export function smoothToNodes(stations: Stations, positions: NodePositions): NodeValues {
  const nodes = sitesAt(positions.latitudeDeg, positions.longitudeDeg, positions.elevationM);
  const fromStations = Array.from({ length: nodes.count }, (_, i) =>
    siteWeights(stations, siteOf(nodes, i), smoothing),
  );
  const atStations = Array.from({ length: stations.count }, (_, i) =>
    siteWeights(nodes, siteOf(stations, i), lookupSettings),
  );
  const formed = {} as Record<ClimateField, Float64Array>;
  for (const field of climateFields) formed[field] = toForm(stations, field);

  const values = {} as Record<ClimateField, Float64Array>;
  for (const field of climateFields) values[field] = new Float64Array(nodes.count * 12);
  const largestWeights = new Float64Array(nodes.count);
  for (let node = 0; node < nodes.count; node++) {
    const weights = twicedWeights(fromStations, atStations, node);
    largestWeights[node] = limitLargest(weights, fromStations[node].site);
    for (const [station, weight] of weights) {
      for (const field of climateFields) {
        const from = formed[field];
        const to = values[field];
        for (let m = 0; m < 12; m++) to[node * 12 + m] = to[node * 12 + m] + weight * from[station * 12 + m];
      }
    }
  }
  return { values, largestWeights };
}

/** Weights of the stations in a node after the second pass: 2G − G·A·G, G smoothing into nodes, A the lookup. */
function twicedWeights(
  fromStations: SiteWeights[],
  atStations: SiteWeights[],
  node: number,
): Map<number, number> {
  const throughNodes = new Map<number, number>();
  const weights = new Map<number, number>();
  const add = (to: Map<number, number>, key: number, weight: number) =>
    to.set(key, (to.get(key) ?? 0) + weight);
  forEachWeight(fromStations[node], (station, weight) => {
    add(weights, station, 2 * weight);
    forEachWeight(atStations[station], (other, back) => add(throughNodes, other, weight * back));
  });
  for (const [other, share] of throughNodes) {
    forEachWeight(fromStations[other], (station, weight) => add(weights, station, -share * weight));
  }
  return weights;
}

function forEachWeight(weights: SiteWeights, visit: (site: number, weight: number) => void): void {
  for (let k = 0; k < weights.site.length; k++) visit(weights.site[k], weights.weight[k]);
}

/** Where one station counts for too much, blends in the plain mean of its nearest neighbours; returns the largest weight. */
function limitLargest(weights: Map<number, number>, nearest: Int32Array): number {
  let station = -1;
  let largest = Number.NEGATIVE_INFINITY;
  for (const [key, weight] of weights) {
    if (weight > largest) {
      largest = weight;
      station = key;
    }
  }
  if (largest <= largestWeight) return largest;
  const keep = largestWeight / largest;
  const neighbours = [...nearest].filter((site) => site !== station).slice(0, 8);
  for (const [key, weight] of weights) weights.set(key, weight * keep);
  for (const site of neighbours) weights.set(site, (weights.get(site) ?? 0) + (1 - keep) / neighbours.length);
  return largestWeight;
}

function toForm(stations: Stations, field: ClimateField): Float64Array {
  const form = fieldForms[field];
  return stations.values[field].map((value, i) => {
    if (form === 'sea-level') return value + lapseCPerM * stations.elevationM[Math.floor(i / 12)];
    return form === 'root' ? Math.sqrt(value) : value;
  });
}
