import { type ClimateNodes, type ClimatePoint, climateAt, coverageKm } from '@neckfall/engine';
import { type Gazetteer, isLand, type LandMask, nearestTown, type Town } from '../places/index.ts';
import type { Place } from './place.ts';

/** The data files, each opened when first asked for. */
export type PlaceAssets = {
  /** All towns. */
  gazetteer: () => Gazetteer;
  /** What is land. */
  land: () => LandMask;
  /** The climatology. */
  climate: () => ClimateNodes;
};

/** A point on the ground; no elevation: to be worked out. */
export type Point = { latitudeDeg: number; longitudeDeg: number; elevationM: number | null };

/** Why there is nothing to plan with. */
export type PlaceProblem =
  | { problem: 'beyond-latitudes' }
  | { problem: 'at-sea'; near: { town: Town; distanceKm: number } }
  /** `near` is null for a town. */
  | { problem: 'beyond-nodes'; nearestNodeKm: number; near: { town: Town; distanceKm: number } | null };

/** Land that is covered. */
const southernmostDeg = -60;
const northernmostDeg = 72;

const isBeyondLatitudes = (latitudeDeg: number) =>
  latitudeDeg < southernmostDeg || latitudeDeg > northernmostDeg;

/** A town made ready; `others` have the same name. A grower's own elevation goes before the town's. */
export function locateTown(
  town: Town,
  others: readonly Town[],
  elevationM: number | null,
  assets: Pick<PlaceAssets, 'climate'>,
): Place | PlaceProblem {
  const { latitudeDeg, longitudeDeg, timeZone } = town;
  if (isBeyondLatitudes(latitudeDeg)) return { problem: 'beyond-latitudes' };
  const height = elevationM ?? town.elevationM;
  const climate = climateAt(assets.climate(), latitudeDeg, longitudeDeg, height);
  if (isUncovered(climate)) {
    return { problem: 'beyond-nodes', nearestNodeKm: climate.nearestNodeKm, near: null };
  }
  const at = { latitudeDeg, longitudeDeg, elevationM: height, timeZone };
  return { town, near: null, ...at, climate, elevationFrom: elevationM === null ? 'town' : 'given', others };
}

/** A bare point made ready: on land, covered, its elevation from the nearest town or climate node. */
export function locatePoint(point: Point, assets: PlaceAssets): Place | PlaceProblem {
  const { latitudeDeg, longitudeDeg } = point;
  if (isBeyondLatitudes(latitudeDeg)) return { problem: 'beyond-latitudes' };
  const near = nearestTown(assets.gazetteer(), latitudeDeg, longitudeDeg);
  if (!isLand(assets.land(), latitudeDeg, longitudeDeg)) return { problem: 'at-sea', near };
  let climate = climateAt(assets.climate(), latitudeDeg, longitudeDeg, point.elevationM);
  if (isUncovered(climate)) return { problem: 'beyond-nodes', nearestNodeKm: climate.nearestNodeKm, near };
  let elevationFrom: Place['elevationFrom'] = point.elevationM === null ? 'node' : 'given';
  if (point.elevationM === null && near.distanceKm <= climate.nearestNodeKm) {
    elevationFrom = 'near-town';
    climate = climateAt(assets.climate(), latitudeDeg, longitudeDeg, near.town.elevationM);
  }
  const at = { latitudeDeg, longitudeDeg, elevationM: climate.elevationM, timeZone: near.town.timeZone };
  return { town: null, near, ...at, climate, elevationFrom, others: [] };
}

const isUncovered = ({ nearestNodeKm }: ClimatePoint) => nearestNodeKm > coverageKm;
