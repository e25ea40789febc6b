import { climateDayOf, type PlantValues, stage } from '../../packages/engine/src/index.ts';
import { everywhere, meanSeasonOf, nominalDay, type Places, type PublishedPlan } from './published-plan.ts';

/** A dated onset of bulbing; dates `MM-DD`. */
export type OnsetCase = PublishedPlan & { id: string; onset: readonly [string, string]; source: string };

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
const behbahan = {
  lat: 30.6,
  lon: 50.24,
  elevationM: 320,
  dayLengthClass: 'short',
  start: 'raised-seedlings',
} as const;

export const onsetCases: readonly OnsetCase[] = [
  { id: 'oshima-8-apr', ...oshima, date: '04-08', onset: ['07-04', '07-04'] },
  { id: 'oshima-22-apr', ...oshima, date: '04-22', onset: ['07-10', '07-10'] },
  { id: 'oshima-6-may', ...oshima, date: '05-06', onset: ['07-18', '07-18'] },
  {
    id: 'behbahan-2007',
    ...behbahan,
    date: '10-26',
    plantOut: '01-26',
    onset: ['03-19', '04-15'],
    source: 'seen: Behbahan 2006–07, three cultivars, ijhs.ut.ac.ir 20919; place and class memory',
  },
  {
    id: 'behbahan-2012-13',
    ...behbahan,
    date: '09-06',
    onset: ['03-01', '03-17'],
    source:
      'seen: Behbahan 2011–13, earliest onset of two seasons; that it was the earliest sowing is inferred',
  },
];

/** Days from the published onset (its middle), late is positive; null where no bulb forms. */
export function onsetErrors(
  values: PlantValues,
  places: Places = everywhere,
): { of: OnsetCase; days: number | null }[] {
  return onsetCases.filter(places).map((of) => {
    const { outcome, plan } = meanSeasonOf(of, values);
    if (outcome.reached < stage.onset) return { of, days: null };
    const published = (climateDayOf(nominalDay(of.onset[0])) + climateDayOf(nominalDay(of.onset[1]))) / 2;
    const days = climateDayOf(plan.startDay + outcome.onsetOn) - published;
    return { of, days: days - 365 * Math.round(days / 365) };
  });
}
