import { climateDayOf, type PlantValues } from '../../packages/engine/src/index.ts';
import { behbahan } from './bolting-pairs.ts';
import { answeredOf, everywhere, nominalDay, type Places, type PublishedPlan } from './published-plan.ts';

/** A crop of which the day is known on which bulbs were seen to start or tops went over; dates `MM-DD`. */
type DatedCase = PublishedPlan & {
  id: string;
  seen: 'onset' | 'fall';
  on: readonly [string, string];
  source: string;
};

const oshima = {
  lat: 41.88,
  lon: 140.65,
  elevationM: 25,
  dayLengthClass: 'long',
  type: 'northern-long',
  start: 'direct-seed',
  densityPerM2: 29.6,
  source: 'seen: Oshima 1950–52, Sapporo-ki, hro.or.jp 1953015; place and class memory',
} as const;
const england = {
  lat: 52.2,
  lon: -1.6,
  elevationM: 50,
  dayLengthClass: 'long',
  start: 'direct-seed',
} as const;

const datedCases: readonly DatedCase[] = [
  { id: 'oshima-8-apr', ...oshima, date: '04-08', seen: 'onset', on: ['07-04', '07-04'] },
  { id: 'oshima-22-apr', ...oshima, date: '04-22', seen: 'onset', on: ['07-10', '07-10'] },
  { id: 'oshima-6-may', ...oshima, date: '05-06', seen: 'onset', on: ['07-18', '07-18'] },
  {
    id: 'behbahan-2007',
    ...behbahan,
    date: '10-26',
    plantOut: '01-26',
    seen: 'onset',
    on: ['03-19', '04-15'],
    source: 'seen: Behbahan 2006–07, three cultivars, ijhs.ut.ac.ir 20919; place and class memory',
  },
  {
    id: 'behbahan-2012-13',
    ...behbahan,
    date: '09-06',
    seen: 'onset',
    on: ['03-01', '03-17'],
    source:
      'seen: Behbahan 2011–13, earliest onset of two seasons; that it was the earliest sowing is inferred',
  },
  { id: 'oshima-8-apr-fall', ...oshima, date: '04-08', seen: 'fall', on: ['08-24', '08-24'] },
  { id: 'oshima-22-apr-fall', ...oshima, date: '04-22', seen: 'fall', on: ['08-25', '08-25'] },
  { id: 'oshima-6-may-fall', ...oshima, date: '05-06', seen: 'fall', on: ['08-30', '08-30'] },
  {
    id: 'kitami-fall',
    lat: 43.75,
    lon: 143.72,
    elevationM: 170,
    dayLengthClass: 'long',
    type: 'northern-long',
    start: 'bought-transplants',
    date: '05-05',
    densityPerM2: 30,
    seen: 'fall',
    on: ['08-11', '08-16'],
    source: 'seen: Kitami strains 1973–75, tops over; place, planting, density memory',
  },
  {
    id: 'wellesbourne-21-apr-fall',
    ...england,
    date: '04-21',
    densityPerM2: 100,
    seen: 'fall',
    on: ['08-12', '08-12'],
    source: 'seen: Brewster 2008 p. 103, main crop at 100 per m²; longitude memory',
  },
  {
    id: 'wellesbourne-wintering-fall',
    ...england,
    date: '08-18',
    densityPerM2: 80,
    seen: 'fall',
    on: ['06-03', '06-10'],
    source: 'seen: J. Hort. Sci. 57:339, 80 % over in early June 1975 and 1976; sowing, density memory',
  },
];

/** Days from the published day (its middle), late is positive; null where it never comes. */
export type DatedError = { of: DatedCase; days: number | null };

export function datedErrors(values: PlantValues, places: Places = everywhere): DatedError[] {
  return datedCases.filter(places).map((of) => {
    const { onsetOn, fellOn, plan } = answeredOf(of, values);
    const on = of.seen === 'onset' ? onsetOn : fellOn;
    if (on === null) return { of, days: null };
    const published = (climateDayOf(nominalDay(of.on[0])) + climateDayOf(nominalDay(of.on[1]))) / 2;
    const days = climateDayOf(plan.startDay + Math.round(on)) - published;
    return { of, days: days - 365 * Math.round(days / 365) };
  });
}
