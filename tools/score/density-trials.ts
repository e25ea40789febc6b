import type { PublishedPlan } from './published-plan.ts';

/** Bulb mass against plants per m² in one trial, as read off its fitted curve 1/w = a + b·d or printed point by point. */
export type DensityTrial = PublishedPlan & {
  id: string;
  /** Trials of one district share soil and year no better than this: their mean level is compared, not each. */
  district: string;
  /** [plants per m², g fresh] */
  masses: readonly (readonly [number, number])[];
  source: string;
};

const curve = (a: number, b: number, densities: readonly number[]) =>
  densities.map((d) => [d, 1000 / (a + b * d)] as const);
const usual = [20, 40, 80, 160];

const australia = {
  elevationM: 50,
  dayLengthClass: 'intermediate',
  start: 'direct-seed',
  date: '06-15',
} as const;
const rogers =
  'Rogers, plots in Ratkowsky 1983: curve fitted to the plots; class, place and sowing (mid-June) memory';
const england = {
  lat: 52.2,
  lon: -1.6,
  elevationM: 50,
  dayLengthClass: 'long',
  start: 'direct-seed',
  date: '03-20',
  district: 'England',
  source: 'Mead 1970, three varieties: curve fitted to the plots; place and sowing (20 March) memory',
} as const;
const poland = {
  lat: 51.96,
  lon: 20.15,
  elevationM: 120,
  dayLengthClass: 'long',
  start: 'direct-seed',
  date: '04-08',
  district: 'Poland',
} as const;

export const densityTrials: readonly DensityTrial[] = [
  {
    id: 'purnong',
    lat: -34.85,
    lon: 139.6,
    ...australia,
    district: 'South Australia',
    masses: curve(1.85, 0.091, usual),
    source: rogers,
  },
  {
    id: 'virginia',
    lat: -34.67,
    lon: 138.56,
    ...australia,
    district: 'South Australia',
    masses: curve(1.7, 0.14, usual),
    source: rogers,
  },
  {
    id: 'mount-gambier',
    lat: -37.83,
    lon: 140.78,
    ...australia,
    district: 'South Australia',
    masses: curve(3.59, 0.109, usual),
    source: rogers,
  },
  {
    id: 'uraidla',
    lat: -34.96,
    lon: 138.74,
    ...australia,
    elevationM: 450,
    district: 'South Australia',
    masses: curve(3.66, 0.121, usual),
    source: rogers,
  },
  { id: 'england-1', ...england, masses: curve(5.25, 0.147, usual) },
  { id: 'england-2', ...england, masses: curve(3.97, 0.171, usual) },
  { id: 'england-3', ...england, masses: curve(4.58, 0.176, usual) },
  {
    id: 'poland-1996',
    ...poland,
    masses: curve(2.8, 0.134, [40, 80]),
    source: 'Rumpel & Felczyński, 1996, marketable yield over density; sowing (8 April) memory',
  },
  {
    id: 'poland-1991-93',
    ...poland,
    masses: curve(4.88, 0.244, [20, 80]),
    source: 'Rumpel & Felczyński, 1991–93, marketable yield over density; sowing (8 April) memory',
  },
  {
    id: 'ituporanga',
    lat: -27.41,
    lon: -49.6,
    elevationM: 475,
    dayLengthClass: 'intermediate',
    start: 'raised-seedlings',
    date: '05-01',
    plantOut: '07-20',
    district: 'Ituporanga',
    masses: [
      [20, 167.9],
      [60, 69.9],
    ],
    source: 'Ituporanga trial, Empasc 355: yield over density; place, class and dates memory',
  },
  {
    id: 'tokachi',
    lat: 42.9,
    lon: 143.1,
    elevationM: 100,
    dayLengthClass: 'long',
    start: 'direct-seed',
    date: '04-25',
    district: 'Hokkaido',
    masses: [[36.5, 200]],
    source: 'seen: Tokachi, direct seed, 34–39 plants per m² give 200 g; place and sowing memory',
  },
  {
    id: 'kitami-direct',
    lat: 43.75,
    lon: 143.72,
    elevationM: 170,
    dayLengthClass: 'long',
    start: 'direct-seed',
    date: '04-25',
    district: 'Hokkaido',
    masses: [[35, 160]],
    source:
      'seen: NARO Hokkaido 2007, Kitamomiji 2000, 5.6 kg/m² at 35 plants per m² (mass derived); place and sowing memory',
  },
];
