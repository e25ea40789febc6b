import type { Cause, Symptom } from '../../packages/engine/src/index.ts';
import type { PublishedPlan } from '../score/published-plan.ts';

/** A crop of a published trial that went wrong, and what its source gives as the cause. */
export type TrialFailure = PublishedPlan & {
  id: string;
  seen: Symptom;
  /** Causes that say what the source says. */
  stated: readonly Cause[];
  source: string;
};

const cold = ['cold-on-large-plants'] as const;
const late = ['started-too-late'] as const;
const crowded = ['crowding'] as const;
const large = ['large-sets'] as const;

const sapporo = { lat: 43.08, lon: 141.33, elevationM: 20, dayLengthClass: 'long', date: '04-25' } as const;
const adana = {
  lat: 37.03,
  lon: 35.37,
  elevationM: 25,
  dayLengthClass: 'short',
  start: 'direct-seed',
} as const;
const georgia = {
  lat: 32,
  lon: -82.2,
  elevationM: 60,
  dayLengthClass: 'short',
  start: 'direct-seed',
} as const;
const ukraine = {
  lat: 49.8,
  lon: 30.1,
  elevationM: 180,
  dayLengthClass: 'long',
  start: 'direct-seed',
} as const;
const mead = { lat: 52.2, lon: -1.6, elevationM: 50, dayLengthClass: 'long', start: 'direct-seed' } as const;
const rogers = {
  elevationM: 50,
  dayLengthClass: 'intermediate',
  start: 'direct-seed',
  date: '06-15',
} as const;

const of = {
  sapporo: 'Hokkaido National Agr. Exp. Station, onion sets 1948–50 (hro.or.jp 1950012); place from memory',
  adana: 'Saygi & Sari 2011, Energy Educ. Sci. Technol. A 28:427–444; place from memory',
  georgia: 'Boyhan et al. 2008, HortTechnology 18; place from memory',
  ukraine:
    'Sowing date influence on yield of onion, Agrobiologiya (Bila Tserkva NAU); place and class from memory',
  mead: 'Mead 1970, Applied Statistics 19:64–81; place and sowing (20 March) from memory',
  rogers: 'Rogers in Ratkowsky 1983; place, class and sowing (mid-June) from memory',
} as const;

export const trialFailures: readonly TrialFailure[] = [
  {
    ...sapporo,
    id: 'Sapporo, sets of 26 mm: 97 % flowered',
    start: 'sets',
    setSizeMm: 26,
    densityPerM2: 28.3,
    seen: 'flowered',
    stated: large,
    source: of.sapporo,
  },
  {
    ...sapporo,
    id: 'Sapporo, sets of 21 mm: 71 % flowered',
    start: 'sets',
    setSizeMm: 21,
    densityPerM2: 28.3,
    seen: 'flowered',
    stated: large,
    source: of.sapporo,
  },
  {
    ...sapporo,
    id: 'Sapporo, sown beside the sets on 29 April: 21 g',
    start: 'direct-seed',
    date: '04-29',
    densityPerM2: 24.6,
    seen: 'small',
    stated: late,
    source: of.sapporo,
  },
  {
    ...adana,
    id: 'Adana, sown 18 September: 77 % flowered',
    date: '09-18',
    seen: 'flowered',
    stated: cold,
    source: of.adana,
  },
  {
    ...adana,
    id: 'Adana, sown 1 October: 54 % flowered',
    date: '10-01',
    seen: 'flowered',
    stated: cold,
    source: of.adana,
  },
  {
    id: 'Behbahan, sown 6 September: 17.5 % flowered',
    lat: 30.6,
    lon: 50.24,
    elevationM: 320,
    dayLengthClass: 'short',
    start: 'raised-seedlings',
    date: '09-06',
    seen: 'flowered',
    stated: cold,
    source: 'Darabi, planting date and density at Behbahan (sppj.spii.ir 540); place and class from memory',
  },
  {
    ...georgia,
    id: 'Georgia, sown 5 October: most seed stems',
    date: '10-05',
    seen: 'flowered',
    stated: cold,
    source: of.georgia,
  },
  {
    ...georgia,
    id: 'Georgia, sown 29 October: too small to harvest',
    date: '10-29',
    seen: 'small',
    stated: late,
    source: of.georgia,
  },
  {
    id: 'Uvalde, planted 9 January: lower yield',
    lat: 29.21,
    lon: -99.79,
    elevationM: 275,
    dayLengthClass: 'short',
    start: 'bought-transplants',
    date: '01-09',
    seen: 'small',
    stated: late,
    source: 'Macias-Leon & Leskovar 2020, Acta Hort. 1273:377–386; place and class from memory',
  },
  {
    id: 'Montoro, planted 18 March: smallest of four dates',
    lat: 40.8,
    lon: 14.6,
    elevationM: 200,
    dayLengthClass: 'long',
    start: 'bought-transplants',
    date: '03-18',
    seen: 'small',
    stated: late,
    source: 'Caruso et al. 2014, Scientia Hort. 166:111–120; place from memory',
  },
  {
    ...ukraine,
    id: 'Bila Tserkva, sown 20 April: half of what was sown before winter',
    date: '04-20',
    seen: 'small',
    stated: late,
    source: of.ukraine,
  },
  {
    ...mead,
    id: 'England, 335 plants per m²: 18 g',
    date: '03-20',
    densityPerM2: 334.5,
    seen: 'small',
    stated: crowded,
    source: of.mead,
  },
  {
    ...mead,
    id: 'England, 182 plants per m²: 30 g',
    date: '03-20',
    densityPerM2: 181.6,
    seen: 'small',
    stated: crowded,
    source: of.mead,
  },
  {
    ...rogers,
    id: 'Virginia, South Australia, 140 plants per m²: 48 g',
    lat: -34.67,
    lon: 138.56,
    densityPerM2: 140.1,
    seen: 'small',
    stated: crowded,
    source: of.rogers,
  },
  {
    ...rogers,
    id: 'Purnong Landing, South Australia, 152 plants per m²: 62 g',
    lat: -34.85,
    lon: 139.6,
    densityPerM2: 152.2,
    seen: 'small',
    stated: crowded,
    source: of.rogers,
  },
  {
    id: 'Khartoum, sets of 22–27 mm: flowered most',
    lat: 15.66,
    lon: 32.53,
    elevationM: 380,
    dayLengthClass: 'short',
    start: 'sets',
    date: '09-15',
    setSizeMm: 24.5,
    seen: 'flowered',
    stated: large,
    source: 'Ali & Hersi, Univ. of Khartoum; place and class from memory',
  },
];
