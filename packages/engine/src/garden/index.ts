export {
  emptyGarden,
  type Garden,
  type GardenPlace,
  gardenRanges,
  gardenSchemaName,
  type OwnCultivar,
} from './garden.ts';
export { type GardenChange, type RestoredGarden, restoreGarden } from './restore-garden.ts';
