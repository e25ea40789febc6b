import { chordSquared, type Position, type Sites } from './sites.ts';

/**
 * Weights of the nearest sites for a point: ordinary kriging (Matheron 1963, Economic Geology 58:1246–1266)
 * with the covariance exp(−(d/1500 km)^1.3), d over ground distance and elevation together. The weights sum to 1 and serve
 * every field and month alike.
 */
export type SiteWeights = { site: Int32Array; weight: Float64Array };

/** How a value is carried from sites to a point between them. */
export type WeightSettings = {
  /** Number of nearest sites that take part. */
  neighbours: number;
  /** Share of a site's variance that its neighbours don't share; larger values smooth more. */
  nugget: number;
};

/** Settings of the lookup in the fitted nodes; found on stations left out of the fit. */
export const lookupSettings: WeightSettings = { neighbours: 20, nugget: 0.002 };

/** A metre up counts as this many km on the ground; found on stations left out of the fit. */
const kmPerMetreUp = 0.2;

/** Range of the covariance, km: beyond the neighbours' reach, so that only its slope near 0 matters. */
const covarianceRangeKm = 1500;
/** Between 1 (rough ground, as the exponential) and 2 (smooth); found on stations left out of the fit. */
const covariancePower = 1.3;

function covarianceAt(squaredKm: number): number {
  return Math.exp(-((squaredKm / covarianceRangeKm ** 2) ** (covariancePower / 2)));
}

/** The nearest sites of a point with their weights. */
export function siteWeights(sites: Sites, at: Position, settings: WeightSettings): SiteWeights {
  const site = nearestSites(sites, at, settings.neighbours);
  return { site, weight: krigingWeights(sites, site, at, settings.nugget) };
}

function distanceSquared(sites: Sites, i: number, at: Position): number {
  const up = (sites.elevationM[i] - at.elevationM) * kmPerMetreUp;
  return chordSquared(sites, i, at) + up * up;
}

/** Nearest sites by ground distance and elevation together, nearest first; all of them where there are fewer. */
export function nearestSites(sites: Sites, at: Position, count: number): Int32Array {
  const wanted = Math.min(count, sites.count);
  const site = new Int32Array(wanted);
  const distance = new Float64Array(wanted).fill(Number.POSITIVE_INFINITY);
  let farthest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < sites.count; i++) {
    // most sites lie too far on one axis alone
    const north = sites.zKm[i] - at.zKm;
    if (north * north >= farthest) continue;
    const d = distanceSquared(sites, i, at);
    if (d >= farthest) continue;
    let slot = wanted - 1;
    while (slot > 0 && distance[slot - 1] > d) {
      distance[slot] = distance[slot - 1];
      site[slot] = site[slot - 1];
      slot--;
    }
    distance[slot] = d;
    site[slot] = i;
    farthest = distance[wanted - 1];
  }
  return site;
}

/** Weights of chosen sites; see {@link siteWeights}. */
export function krigingWeights(sites: Sites, site: Int32Array, at: Position, nugget: number): Float64Array {
  const n = site.length;
  const covariance = new Float64Array(n * n);
  const toPoint = new Float64Array(n);
  const ones = new Float64Array(n).fill(1);
  const other: Position = { xKm: 0, yKm: 0, zKm: 0, elevationM: 0 };
  for (let a = 0; a < n; a++) {
    const i = site[a];
    toPoint[a] = covarianceAt(distanceSquared(sites, i, at));
    other.xKm = sites.xKm[i];
    other.yKm = sites.yKm[i];
    other.zKm = sites.zKm[i];
    other.elevationM = sites.elevationM[i];
    for (let b = 0; b < a; b++) {
      covariance[a * n + b] = covarianceAt(distanceSquared(sites, site[b], other));
    }
    covariance[a * n + a] = 1 + nugget;
  }
  factorInPlace(covariance, n);
  solveFactored(covariance, n, toPoint);
  solveFactored(covariance, n, ones);
  let sumPoint = 0;
  let sumOnes = 0;
  for (let a = 0; a < n; a++) {
    sumPoint += toPoint[a];
    sumOnes += ones[a];
  }
  // Lagrange's multiplier for weights that sum to 1
  const share = (1 - sumPoint) / sumOnes;
  for (let a = 0; a < n; a++) toPoint[a] = toPoint[a] + share * ones[a];
  return toPoint;
}

/** Cholesky factor of the lower triangle; positive definite because of the nugget. */
function factorInPlace(m: Float64Array, n: number): void {
  for (let a = 0; a < n; a++) {
    for (let b = 0; b <= a; b++) {
      let sum = m[a * n + b];
      for (let c = 0; c < b; c++) sum -= m[a * n + c] * m[b * n + c];
      m[a * n + b] = a === b ? Math.sqrt(sum) : sum / m[b * n + b];
    }
  }
}

function solveFactored(m: Float64Array, n: number, x: Float64Array): void {
  for (let a = 0; a < n; a++) {
    let sum = x[a];
    for (let c = 0; c < a; c++) sum -= m[a * n + c] * x[c];
    x[a] = sum / m[a * n + a];
  }
  for (let a = n - 1; a >= 0; a--) {
    let sum = x[a];
    for (let c = a + 1; c < n; c++) sum -= m[c * n + a] * x[c];
    x[a] = sum / m[a * n + a];
  }
}
