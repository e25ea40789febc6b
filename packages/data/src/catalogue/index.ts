export {
  type Colour,
  type CropKind,
  type Cultivar,
  type CultivarField,
  colours,
  cropKinds,
  cultivarUses,
  type Maturity,
  maturities,
  type Origin,
  type PublishedNeed,
  type Shape,
  type Source,
  shapes,
  type TypeReason,
  typeReasons,
  type Use,
} from './cultivar.ts';
export { catalogueSources, cultivars } from './cultivars.ts';
export { editDistance } from './edit-distance.ts';
export { type CultivarAnswer, findCultivar, searchCultivars } from './find-cultivar.ts';
export { jobSources } from './job-sources.ts';
export { type Nearness, nearnesses, nearnessOf } from './nearness.ts';
export { plantOf } from './plant-of.ts';
export {
  type StartFact,
  type StartFacts,
  type StartLevel,
  type StartTopic,
  startTopics,
} from './start-fact.ts';
export { startFacts } from './start-facts.ts';
