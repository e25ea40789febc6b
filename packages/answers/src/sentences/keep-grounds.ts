import type { KitchenUse, UseSource } from '@neckfall/data';
import {
  type Household,
  type KeepYear,
  type LocalPractice,
  type StoreClimate,
  type StoreSaid,
  type StoreTaught,
  standFigures,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { districtAssumption, practiceAssumptions } from './assumptions.ts';

/** What one person usually eats, and where that is from; null: it was said. */
type UsualUse = Pick<KitchenUse, 'gramsPerPerson' | 'source'> | null;

/** Where a figure of what people eat is from. */
export function useSource(source: UseSource, { say }: Speaker): string {
  switch (source.from) {
    case 'published':
    case 'united-nations': {
      const { from, title, year } = source;
      return say(`keep.source.${from}`, { title, year: String(year ?? 'none') });
    }
    case 'conference':
      return say('keep.source.conference', { year: String(source.year) });
    case 'memory':
      return say('keep.source.memory');
  }
}

/** A store by its name. */
export function storeName(said: StoreSaid, { say }: Speaker): string {
  if (typeof said === 'string') return say(`keep.store.${said}`);
  return say('place' in said ? `keep.store.${said.place}` : 'keep.store.own');
}

/** What an answer on a kitchen's year took for granted: use, store, years tried, weights, the district, the way of growing. */
export function keepGrounds(
  { year, store }: { year: KeepYear; store: StoreClimate },
  usual: UsualUse,
  practice: readonly LocalPractice[],
  speaker: Speaker,
): string[] {
  const { say, years, numberRange } = speaker;
  const { lots, household } = year;
  const supplied = [
    say('keep.how.supplied', {
      tried: year.years,
      years: years(year.suppliedYearsShare, year.years),
    }),
    say('keep.how.weights', { gram: numberRange(...standFigures.seedsPerGram.value) }),
  ];
  return [
    useSentence(household, usual, speaker),
    storeSentence(household.store, store, speaker),
    ...(year.taught ? [taughtSentence(year.taught, speaker)] : []),
    ...(lots.length > 0 ? supplied : []),
    ...districtAssumption(practice, speaker),
    ...new Set(lots.flatMap(({ plan }) => practiceAssumptions(plan, speaker))),
  ];
}

function useSentence({ people, gramsPerWeek }: Household, usual: UsualUse, speaker: Speaker): string {
  const { say, quantity } = speaker;
  const week = quantity('crop', gramsPerWeek / 1000);
  if (!usual) return say('keep.how.use.given', { week, people });
  const { gramsPerPerson, source } = usual;
  return say('keep.how.use.usual', {
    week,
    people,
    each: quantity('bulbMass', gramsPerPerson),
    source: useSource(source, speaker),
  });
}

function storeSentence(said: StoreSaid, { tempC, humidityPct }: StoreClimate, speaker: Speaker): string {
  const { say, quantityRange, quantity, numberRange, number } = speaker;
  const [cold, warm] = endsOf(tempC);
  const [dry, damp] = endsOf(humidityPct);
  return say('keep.how.store', {
    store: storeName(said, speaker),
    temps: warm - cold < 0.5 ? quantity('temperature', cold) : quantityRange('temperature', cold, warm),
    damp: damp - dry < 0.5 ? number(dry) : numberRange(dry, damp),
    said: typeof said === 'string' ? 'usual' : 'place' in said ? 'read' : 'own',
    readings: typeof said !== 'string' && 'place' in said ? said.readings.length : 0,
  });
}

/** Less than so much either way is told as usual, shares. */
const told = { sprouting: 0.05, rotting: 0.25 } as const;

function taughtSentence({ looks, sproutingPace, rottingPace }: StoreTaught, { say }: Speaker): string {
  // a rest used up at twice the pace is half as long
  const later = 1 / sproutingPace - 1;
  return say('keep.how.taught', {
    looks,
    sprouting: Math.abs(later) < told.sprouting ? 'usual' : later > 0 ? 'later' : 'sooner',
    share: Math.round(100 * Math.abs(later)),
    rotting: Math.abs(rottingPace - 1) < told.rotting ? 'usual' : rottingPace > 1 ? 'more' : 'fewer',
  });
}

function endsOf(values: Float64Array): [number, number] {
  return [Math.min(...values), Math.max(...values)];
}
