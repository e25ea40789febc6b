export {
  type AtlasAsked,
  type AtlasEntry,
  type AtlasFigures,
  atlasEntries,
  leadAt,
  leadingEntry,
} from './atlas-entries.ts';
export { type Grid, type GridPoint, gridOf, gridPoints, type Region, wholeWorld } from './grid.ts';
