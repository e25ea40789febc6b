export {
  type LatitudeClimates,
  lastLatitude,
  latitudeClimate,
  latitudeClimates,
  lowM,
  mostWarmerC,
} from './latitude-climates.ts';
export {
  coldestNightC,
  latitudeSeed,
  latitudeYears,
  type OppositePlace,
  openLatitude,
  type SameWinter,
  sameWinter,
  type WinterPlace,
} from './same-winter.ts';
export {
  type BestAtLatitude,
  bestOfSown,
  bestSown,
  type KindSown,
  kindsSown,
  type LongEnough,
  type SunOverYear,
  sowingYear,
  sownInPlace,
  sunOverYear,
} from './sown-at-latitude.ts';
