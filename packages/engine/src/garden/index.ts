export {
  emptyGarden,
  type Garden,
  type GardenPlace,
  gardenRanges,
  gardenSchemaName,
  type OwnCultivar,
} from './garden.ts';
export type { GardenPlanting } from './planting.ts';
export { type RestoredGarden, restoreGarden } from './restore-garden.ts';
export type { GardenChange } from './restoring.ts';
