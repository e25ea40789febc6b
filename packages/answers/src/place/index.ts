// where a place is found is the library's; answers speak of it
export {
  locatePoint,
  locateTown,
  type Place,
  type PlaceAssets,
  type PlaceProblem,
  type Point,
} from '@neckfall/data';
export { countryOf } from './country-of.ts';
export { elevationIsUnsure } from './elevation-is-unsure.ts';
export { coordinateWords, placeLabel, pointLabel, townLabel } from './place-label.ts';
export { standardOffsetH } from './standard-offset.ts';
