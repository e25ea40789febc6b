export { bedOf, type GardenBed, plantingInBed } from './bed.ts';
export { drawnId, idBytes } from './drawn-id.ts';
export { foldName } from './fold-name.ts';
export {
  emptyGarden,
  type Garden,
  type GardenPlace,
  gardenRanges,
  gardenSchemaName,
  type OwnCultivar,
} from './garden.ts';
export {
  type GardenWeather,
  mostWeatherDays,
  type WeatherSource,
} from './garden-weather.ts';
export { type JobMark, type JobMarkState, jobMarkStates } from './job-mark.ts';
export {
  type ComingWeather,
  comingOf,
  type JoinedWeather,
  joinWeather,
  type OverlapChoice,
} from './join-weather.ts';
export type { GardenKitchen } from './kitchen.ts';
export { type Like, likes, type StorePlace, storePlaces } from './kitchen-words.ts';
export { type LongList, longList } from './long-list.ts';
export { isNestedTooDeep, mostLevels } from './nesting.ts';
export {
  isDate,
  isFeed,
  longestNote,
  type Observation,
  type ObservedNumber,
  observedNumbers,
} from './observation.ts';
export { type OddCode, type OddValue, odd } from './odd.ts';
export type { GardenPlanting } from './planting.ts';
export { type RestoredGarden, restoreGarden } from './restore-garden.ts';
export type { GardenChange } from './restoring.ts';
export { type AlliumsBefore, alliumBreakYears, alliumsBefore } from './rotation.ts';
export { mostReadings, type StoreReading } from './store-reading.ts';
export { weatherMet, weatherNear } from './weather-met.ts';
export { gardenWeatherOf, recordOfGarden } from './weather-record.ts';
