export { countryOf } from './country-of.ts';
export { elevationIsUnsure } from './elevation-is-unsure.ts';
export { locatePoint, locateTown, type PlaceAssets, type PlaceProblem, type Point } from './locate.ts';
export type { Place } from './place.ts';
export { coordinateWords, type LabelledPlace, placeLabel, pointLabel, townLabel } from './place-label.ts';
export { standardOffsetH } from './standard-offset.ts';
