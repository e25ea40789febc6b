export { greatCircleKm } from './distance.ts';
export { findTowns, type TownsFound } from './find-towns.ts';
export { foldName } from './fold-name.ts';
export { type Gazetteer, openGazetteer, townAt } from './gazetteer.ts';
export { isLand, type LandMask } from './land-mask.ts';
export type { LandOutline } from './land-outline.ts';
export { nearbyLarger, nearestTown } from './nearest-town.ts';
export { resolveTown, type TownAnswer } from './resolve-town.ts';
export type { Town } from './town.ts';
