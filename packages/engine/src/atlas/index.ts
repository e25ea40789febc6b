export { type AtlasAsked, type AtlasEntry, atlasEntries, leadingEntry } from './atlas-entries.ts';
export { type GridPoint, gridPoints, type Region, wholeWorld } from './grid.ts';
