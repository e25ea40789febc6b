export {
  emptyGarden,
  type Garden,
  type GardenPlace,
  gardenRanges,
  gardenSchemaName,
  type OwnCultivar,
} from './garden.ts';
export { type LongList, longList } from './long-list.ts';
export { isNestedTooDeep, mostLevels } from './nesting.ts';
export type { GardenPlanting } from './planting.ts';
export { type RestoredGarden, restoreGarden } from './restore-garden.ts';
export type { GardenChange } from './restoring.ts';
