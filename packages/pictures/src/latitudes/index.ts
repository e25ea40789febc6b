export { LatitudeLine } from './latitude-line.tsx';
export { type BestOfDegree, latitudeLineOf, latitudeTableOf } from './latitude-line-of.ts';
export { keptLatitudeYear, LatitudeYear } from './latitude-year.tsx';
export { latitudeYearOf } from './latitude-year-of.ts';
