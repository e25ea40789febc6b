import { earthRadiusKm } from '../../packages/engine/src/climate/index.ts';
import { randomSource } from '../../packages/engine/src/math/index.ts';
import type { Stations } from './stations.ts';

export type NodePositions = {
  latitudeDeg: Float64Array;
  longitudeDeg: Float64Array;
  elevationM: Float64Array;
};

/** In the clustering a metre up counts as this many km, so that mountains get nodes on several levels. */
const kmPerMetreUp = 0.3;
/** … and one √mm of annual rain as this many, so that nodes crowd where rain changes fast. */
const kmPerRootMm = 20;
const rounds = 6;
/** A node that stands for one station alone is moved this share of the way to its neighbour, at most so many km. */
const loneShift = { share: 0.25, atMostKm: 15 };

/** Sizes of one unit in the file. */
export const positionSteps = { latitudeStep: 0.01, longitudeStep: 0.01, elevationStep: 5 };

/**
 * Places `count` nodes by k-means over ground, elevation and annual rain, so that nodes are dense where stations are
 * dense or the climate changes fast; rounded to the file's units, in the order of a tour from neighbour to neighbour.
 */
export function placeNodes(stations: Stations, count: number, seed: number): NodePositions {
  const points = features(stations);
  const { centres, members } = cluster(points, stations.count, count, seed);
  shiftLoneNodes(centres, members, points, stations.count);
  const order = tour(centres, count);
  const positions = {
    latitudeDeg: new Float64Array(count),
    longitudeDeg: new Float64Array(count),
    elevationM: new Float64Array(count),
  };
  const toStep = (value: number, step: number) => Math.round(value / step) * step;
  order.forEach((node, i) => {
    const [x, y, z, up] = centres.subarray(node * width, node * width + 4);
    const degrees = 180 / Math.PI;
    positions.latitudeDeg[i] = toStep(Math.atan2(z, Math.hypot(x, y)) * degrees, positionSteps.latitudeStep);
    positions.longitudeDeg[i] = toStep(Math.atan2(y, x) * degrees, positionSteps.longitudeStep);
    positions.elevationM[i] = toStep(up / kmPerMetreUp, positionSteps.elevationStep);
  });
  return positions;
}

const width = 5;

function features(stations: Stations): Float64Array {
  const points = new Float64Array(stations.count * width);
  for (let i = 0; i < stations.count; i++) {
    let rain = 0;
    for (let month = 0; month < 12; month++) rain += stations.values.rainMm[i * 12 + month];
    points.set(
      [
        stations.xKm[i],
        stations.yKm[i],
        stations.zKm[i],
        stations.elevationM[i] * kmPerMetreUp,
        Math.sqrt(rain) * kmPerRootMm,
      ],
      i * width,
    );
  }
  return points;
}

function squared(a: Float64Array, i: number, b: Float64Array, j: number): number {
  let sum = 0;
  for (let d = 0; d < width; d++) sum += (a[i * width + d] - b[j * width + d]) ** 2;
  return sum;
}

function cluster(points: Float64Array, n: number, count: number, seed: number) {
  const centres = spreadSeeds(points, n, count, seed);
  const members = new Int32Array(count);
  for (let round = 0; round < rounds; round++) {
    const { nearest, distance } = assign(points, n, centres, count);
    const sums = new Float64Array(count * width);
    members.fill(0);
    for (let i = 0; i < n; i++) {
      const c = nearest[i];
      members[c] = members[c] + 1;
      for (let d = 0; d < width; d++) sums[c * width + d] = sums[c * width + d] + points[i * width + d];
    }
    const farthest = Array.from({ length: n }, (_, i) => i).sort((a, b) => distance[b] - distance[a]);
    let reseated = 0;
    for (let c = 0; c < count; c++) {
      const empty = members[c] === 0;
      const from = empty ? farthest[reseated++] : 0;
      for (let d = 0; d < width; d++) {
        centres[c * width + d] = empty ? points[from * width + d] : sums[c * width + d] / members[c];
      }
    }
  }
  return { centres, members };
}

/**
 * First centres: stations drawn one by one with chances that grow with the distance to those drawn before (k-means++,
 * Arthur & Vassilvitskii 2007, but with its fourth power), so that thinly observed country gets its share.
 */
function spreadSeeds(points: Float64Array, n: number, count: number, seed: number): Float64Array {
  const random = randomSource(seed);
  const centres = new Float64Array(count * width);
  const distance = new Float64Array(n).fill(Number.POSITIVE_INFINITY); // squared
  let drawn = Math.floor(random.uniform() * n);
  for (let c = 0; c < count; c++) {
    centres.set(points.subarray(drawn * width, (drawn + 1) * width), c * width);
    let total = 0;
    for (let i = 0; i < n; i++) {
      distance[i] = Math.min(distance[i], squared(points, i, centres, c));
      total += distance[i] ** 2;
    }
    let left = random.uniform() * total;
    drawn = 0;
    while (drawn < n - 1 && left > distance[drawn] ** 2) left -= distance[drawn++] ** 2;
  }
  return centres;
}

/** Nearest centre of every point; centres sorted along one axis so that most need no look. */
function assign(points: Float64Array, n: number, centres: Float64Array, count: number) {
  const order = Int32Array.from({ length: count }, (_, c) => c).sort(
    (a, b) => centres[a * width + 2] - centres[b * width + 2],
  );
  const axis = Float64Array.from(order, (c) => centres[c * width + 2]);
  const nearest = new Int32Array(n);
  const distance = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const z = points[i * width + 2];
    let low = 0;
    let high = count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (axis[middle] < z) low = middle + 1;
      else high = middle;
    }
    let best = Number.POSITIVE_INFINITY;
    const look = (at: number) => {
      const d = squared(points, i, centres, order[at]);
      if (d < best) {
        best = d;
        nearest[i] = order[at];
      }
    };
    for (let at = low; at < count && (axis[at] - z) ** 2 < best; at++) look(at);
    for (let at = low - 1; at >= 0 && (axis[at] - z) ** 2 < best; at--) look(at);
    distance[i] = best;
  }
  return { nearest, distance };
}

function shiftLoneNodes(centres: Float64Array, members: Int32Array, points: Float64Array, n: number): void {
  members.forEach((size, c) => {
    if (size > 1) return;
    let own = 0;
    let neighbour = -1;
    let least = Number.POSITIVE_INFINITY;
    let second = Number.POSITIVE_INFINITY;
    for (let i = 0; i < n; i++) {
      const d = squared(centres, c, points, i);
      if (d < least) {
        second = least;
        neighbour = own;
        least = d;
        own = i;
      } else if (d < second) {
        second = d;
        neighbour = i;
      }
    }
    if (neighbour < 0) return;
    const share = Math.min(loneShift.share, loneShift.atMostKm / Math.sqrt(second));
    for (let d = 0; d < width; d++) {
      const at = c * width + d;
      centres[at] = centres[at] + share * (points[neighbour * width + d] - centres[at]);
    }
    const radius = Math.hypot(...centres.subarray(c * width, c * width + 3));
    for (let d = 0; d < 3; d++) centres[c * width + d] = (centres[c * width + d] * earthRadiusKm) / radius;
  });
}

/** Each node is followed by its nearest not yet visited, so that neighbours in the file are neighbours on the ground. */
function tour(centres: Float64Array, count: number): number[] {
  const left = Array.from({ length: count }, (_, c) => c);
  const order = [left.pop()!];
  while (left.length > 0) {
    const from = order.at(-1)!;
    let best = 0;
    let least = Number.POSITIVE_INFINITY;
    for (let k = 0; k < left.length; k++) {
      const d = squared(centres, from, centres, left[k]);
      if (d < least) {
        least = d;
        best = k;
      }
    }
    order.push(left[best]);
    left[best] = left.at(-1)!;
    left.pop();
  }
  return order;
}
