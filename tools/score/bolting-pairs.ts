import type { PlantValues } from '../../packages/engine/src/index.ts';
import { answeredOf, everywhere, type Places, type PublishedPlan } from './published-plan.ts';

/** Two crops of one place of which a source says that the first bolts and the second hardly does. */
type BoltingPair = { id: string; bolts: PublishedPlan; stands: PublishedPlan; source: string };

const newMexico = {
  lat: 32.3,
  lon: -106.8,
  elevationM: 1190,
  dayLengthClass: 'short',
  start: 'direct-seed',
} as const;
const adana = {
  lat: 37.03,
  lon: 35.37,
  elevationM: 25,
  dayLengthClass: 'short',
  start: 'direct-seed',
} as const;
const pukekohe = {
  lat: -37.2,
  lon: 174.9,
  elevationM: 80,
  dayLengthClass: 'long',
  start: 'direct-seed',
} as const;
const faridpur = {
  lat: 23.6,
  lon: 89.84,
  elevationM: 10,
  dayLengthClass: 'short',
  start: 'raised-seedlings',
} as const;
export const behbahan = {
  lat: 30.6,
  lon: 50.24,
  elevationM: 320,
  dayLengthClass: 'short',
  start: 'raised-seedlings',
} as const;
const korea = {
  lat: 35.4,
  lon: 128.3,
  elevationM: 30,
  dayLengthClass: 'intermediate',
  start: 'raised-seedlings',
  date: '09-04',
  plantOut: '11-05',
} as const;
const sapporo = {
  lat: 43.08,
  lon: 141.33,
  elevationM: 17,
  dayLengthClass: 'long',
  type: 'northern-long',
  start: 'sets',
  date: '04-25',
} as const;
const georgia = { lat: 32, lon: -82.2, elevationM: 60, dayLengthClass: 'short' } as const;

const boltingPairs: readonly BoltingPair[] = [
  {
    id: 'new-mexico',
    bolts: { ...newMexico, date: '09-05' },
    stands: { ...newMexico, date: '10-15' },
    source: 'seen in words: Corgan & Kedar 1990 (early September much, mid-October none)',
  },
  {
    id: 'adana',
    bolts: { ...adana, date: '09-18' },
    stands: { ...adana, date: '10-15' },
    source: 'seen: Saygi & Sari 2011, 77 and 19 %',
  },
  {
    id: 'pukekohe',
    bolts: { ...pukekohe, date: '05-05' },
    stands: { ...pukekohe, date: '06-22' },
    source: 'seen in words: Hutton & Wilson 1986 (earliest of six sowings bolted, best early to late June)',
  },
  {
    id: 'faridpur',
    bolts: { ...faridpur, date: '10-03', plantOut: '11-15' },
    stands: { ...faridpur, date: '11-18', plantOut: '12-30' },
    source: 'seen: Faridpur 2018–19, 71 and 2 %; sowing dates memory',
  },
  {
    id: 'behbahan',
    bolts: { ...behbahan, date: '09-06' },
    stands: { ...behbahan, date: '10-21' },
    source: 'seen: Darabi, Behbahan 2011–13, 17.5 % for 6 September, fewer with each later date',
  },
  {
    id: 'korea',
    bolts: { ...korea, establishmentWarmerC: 2.6 },
    stands: korea,
    source: 'seen: Gyeongnam, establishment 2.6 °C warmer, bolters 33 against 4 t/ha; sowing memory',
  },
  {
    id: 'sapporo-sets',
    bolts: { ...sapporo, setSizeMm: 21 },
    stands: { ...sapporo, setSizeMm: 10 },
    source: 'seen: Sapporo 1949–50, 71 and 0.6 %',
  },
  {
    id: 'georgia',
    bolts: { ...georgia, start: 'direct-seed', date: '10-05' },
    stands: { ...georgia, start: 'direct-seed', date: '10-29' },
    source: 'seen in words: Georgia 2001, most seedstems for 5 October; place memory',
  },
];

export type PairResult = { pair: BoltingPair; bolts: number; stands: number };

/** Bolted shares of both sides as answered. */
export function pairResults(values: PlantValues, places: Places = everywhere): PairResult[] {
  return boltingPairs
    .filter(({ bolts }) => places(bolts))
    .map((pair) => ({
      pair,
      bolts: boltedShare(pair.bolts, values),
      stands: boltedShare(pair.stands, values),
    }));
}

function boltedShare(of: PublishedPlan, values: PlantValues): number {
  return answeredOf(of, values).boltedShare;
}

/** A pair is told right where the first bolts clearly more: by ten points, or half again as much and five points. */
export function isTold({ bolts, stands }: PairResult): boolean {
  const more = bolts - stands;
  return more >= 0.1 || (more >= 0.05 && bolts >= 1.5 * stands);
}
