export { type AtlasAsked, type AtlasEntry, atlasEntries, leadAt, leadingEntry } from './atlas-entries.ts';
export { type GridPoint, gridPoints, type Region, wholeWorld } from './grid.ts';
