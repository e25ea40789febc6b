import { monthLengths } from '../calendar/index.ts';
import { clamp } from '../math/index.ts';
import {
  type ClimateField,
  type ClimateNodes,
  climateFields,
  fieldForms,
  lapseCPerM,
} from './climate-nodes.ts';
import { minTempSd } from './min-temp-sd.ts';
import { type ClimatePoint, elevationSpreadKm, type FittedClimate } from './monthly-climate.ts';
import { lookupSettings, type SiteWeights, siteWeights } from './site-weights.ts';
import { chordSquared, groundKm, type Position, positionAt } from './sites.ts';

/** Least and greatest value of a field in a month (0 = January). */
const bounds: Record<ClimateField, (month: number) => [number, number]> = {
  tempMeanC: () => [-90, 60],
  tempRangeC: () => [1, 30],
  rainMm: () => [0, 5000],
  wetDays: (month) => [0, monthLengths[month]],
  relativeHumidityPct: () => [1, 100],
  sunshinePct: () => [0, 100],
  wind10mMs: () => [0, 30],
  frostNights: (month) => [0, monthLengths[month]],
};

/**
 * Monthly climate of a point, blended from the nodes around it (see `docs/climate.md` for its errors).
 * `elevationM` null: the nearest node's. Always answers; {@link ClimatePoint.nearestNodeKm} says whether to
 * trust it. Throws a RangeError for a latitude outside −90…90, a longitude outside −180…180, an elevation
 * outside −500…9000 m.
 */
export function climateAt(
  nodes: ClimateNodes,
  latitudeDeg: number,
  longitudeDeg: number,
  elevationM: number | null,
): ClimatePoint {
  check('latitude', latitudeDeg, -90, 90, 'degrees');
  check('longitude', longitudeDeg, -180, 180, 'degrees');
  if (elevationM !== null) check('elevation', elevationM, -500, 9000, 'm');

  const ground = positionAt(latitudeDeg, longitudeDeg, 0);
  const around = nodesAround(nodes, ground);
  const elevation = elevationM ?? nodes.elevationM[around.nearest];
  const weights = siteWeights(nodes, { ...ground, elevationM: elevation }, lookupSettings);

  const climate = blendedClimate(nodes, weights, { latitudeDeg, longitudeDeg, elevationM: elevation });
  return {
    ...climate,
    minTempSdC: minTempSd(climate),
    nearestNodeKm: around.nearestKm,
    elevationFrom: elevationM === null ? 'nearest-node' : 'given',
    nodeElevationSpreadM: around.spreadM,
  };
}

/** Monthly climate of nodes blended by weights that sum to 1; with none below 0, no month leaves the range of the nodes. */
export function blendedClimate(
  nodes: ClimateNodes,
  weights: SiteWeights,
  at: Pick<FittedClimate, 'latitudeDeg' | 'longitudeDeg' | 'elevationM'>,
): FittedClimate {
  const climate = { ...at } as FittedClimate;
  for (const field of climateFields) climate[field] = blend(nodes, weights, field, at.elevationM);
  return climate;
}

function check(name: string, value: number, low: number, high: number, unit: string): void {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${name} ${value}: expected ${low} to ${high} ${unit}`);
  }
}

function nodesAround(
  nodes: ClimateNodes,
  at: Position,
): { nearest: number; nearestKm: number; spreadM: number } {
  let nearest = 0;
  let least = Number.POSITIVE_INFINITY;
  let lowest = Number.POSITIVE_INFINITY;
  let highest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < nodes.count; i++) {
    const d = chordSquared(nodes, i, at);
    if (d < least) {
      least = d;
      nearest = i;
    }
    // chord and arc differ by 0.1 m at 50 km
    if (d <= elevationSpreadKm * elevationSpreadKm) {
      lowest = Math.min(lowest, nodes.elevationM[i]);
      highest = Math.max(highest, nodes.elevationM[i]);
    }
  }
  return { nearest, nearestKm: groundKm(Math.sqrt(least)), spreadM: Math.max(0, highest - lowest) };
}

function blend(
  nodes: ClimateNodes,
  weights: SiteWeights,
  field: ClimateField,
  elevationM: number,
): Float64Array {
  const { mean, components, scores } = nodes.fields[field];
  const months = Float64Array.from(mean);
  for (let c = 0; c < components.length; c++) {
    let score = 0;
    for (let k = 0; k < weights.site.length; k++)
      score += weights.weight[k] * scores[weights.site[k] * components.length + c];
    for (let month = 0; month < 12; month++) months[month] = months[month] + score * components[c][month];
  }
  const form = fieldForms[field];
  for (let month = 0; month < 12; month++) {
    let value = months[month];
    if (form === 'sea-level') value -= lapseCPerM * elevationM;
    if (form === 'root') value = Math.max(0, value) ** 2;
    const [low, high] = bounds[field](month);
    months[month] = clamp(value, low, high);
  }
  return months;
}
