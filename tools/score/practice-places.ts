import type { DayLengthClass, StartMethod } from '../../packages/engine/src/index.ts';

export type PracticePlace = readonly [
  name: string,
  latitudeDeg: number,
  longitudeDeg: number,
  elevationM: number,
];

/** Low places of long summer days, by design: sea and inland, west and east, every continent with land there. */
export const northernPlaces: readonly PracticePlace[] = [
  ['London', 51.51, -0.13, 20],
  ['Bristol', 51.45, -2.59, 30],
  ['Manchester', 53.48, -2.24, 40],
  ['Aberdeen', 57.15, -2.09, 30],
  ['Dublin', 53.35, -6.26, 20],
  ['Brest', 48.39, -4.49, 40],
  ['Nantes', 47.22, -1.55, 20],
  ['Paris', 48.86, 2.35, 40],
  ['Brussels', 50.85, 4.35, 30],
  ['Amsterdam', 52.37, 4.9, 0],
  ['Hamburg', 53.55, 9.99, 10],
  ['Berlin', 52.52, 13.4, 40],
  ['Munich', 48.14, 11.58, 520],
  ['Prague', 50.09, 14.42, 240],
  ['Vienna', 48.21, 16.37, 170],
  ['Warsaw', 52.23, 21.01, 110],
  ['Copenhagen', 55.68, 12.57, 10],
  ['Gothenburg', 57.71, 11.97, 10],
  ['Stockholm', 59.33, 18.07, 20],
  ['Oslo', 59.91, 10.75, 20],
  ['Helsinki', 60.17, 24.94, 20],
  ['Tallinn', 59.44, 24.75, 20],
  ['Riga', 56.95, 24.11, 10],
  ['Vilnius', 54.69, 25.28, 110],
  ['Kyiv', 50.45, 30.52, 160],
  ['Kazan', 55.79, 49.12, 80],
  ['Seattle', 47.61, -122.33, 40],
  ['Vancouver', 49.25, -123.1, 30],
  ['Fargo', 46.88, -96.79, 275],
  ['Winnipeg', 49.9, -97.14, 235],
  ['Quebec', 46.81, -71.21, 60],
  ['Sapporo', 43.06, 141.35, 20],
];

/** Of these, where winters let onions stand (common practice, no source). */
const mildNames: readonly string[] = [
  'London',
  'Bristol',
  'Dublin',
  'Brest',
  'Nantes',
  'Amsterdam',
  'Seattle',
  'Vancouver',
];
export const mildPlaces = northernPlaces.filter(([name]) => mildNames.includes(name));

/** Low places within 20° of the equator, dry and wet. */
export const tropicalPlaces: readonly PracticePlace[] = [
  ['Singapore', 1.35, 103.82, 20],
  ['Chiclayo', -6.8, -79.85, 30],
  ['Caracas coast', 10.6, -66.9, 10],
  ['Darwin', -12.4, 130.9, 30],
  ['Managua', 12.1, -86.3, 80],
  ['Chennai', 13.1, 80.2, 10],
  ['Niamey', 13.5, 2.1, 210],
  ['Bangkok', 13.75, 100.5, 10],
  ['Dakar', 14.7, -17.4, 20],
  ['Mumbai', 19.1, 72.8, 10],
  ['Veracruz', 19.2, -96.1, 10],
];

/** A crop that winters or is sown early enough to make many leaves; weeks of the year in which it is tried. */
export type LeafyCrop = {
  place: PracticePlace;
  class: DayLengthClass;
  start: StartMethod;
  /** First and last month, 1…12. */
  months: readonly [from: number, to: number];
};

export const leafyCrops: readonly LeafyCrop[] = [
  {
    place: ['Behbahan', 30.6, 50.25, 320],
    class: 'intermediate',
    start: 'raised-seedlings',
    months: [8, 11],
  },
  { place: ['Las Cruces', 32.3, -106.8, 1190], class: 'short', start: 'direct-seed', months: [9, 11] },
  { place: ['Vidalia', 32.1, -82.3, 60], class: 'short', start: 'raised-seedlings', months: [8, 11] },
  { place: ['Fresno', 36.3, -119.8, 75], class: 'intermediate', start: 'direct-seed', months: [9, 12] },
  { place: ['Riverina', -34.3, 146.05, 125], class: 'intermediate', start: 'direct-seed', months: [4, 8] },
  { place: ['Pukekohe', -37.2, 174.9, 80], class: 'intermediate', start: 'direct-seed', months: [4, 8] },
  { place: ['Devonport, Tasmania', -41.2, 146.35, 20], class: 'long', start: 'direct-seed', months: [4, 9] },
];
