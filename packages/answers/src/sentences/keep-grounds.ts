import {
  type Household,
  type KeepYear,
  type StoreClimate,
  type StoreSaid,
  standFigures,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Where the weight that a kitchen eats in a week is from; null: it was said. */
export type UsualUse = { gramsPerPerson: number; source: string } | null;

/** A store by its name. */
export function storeName(said: StoreSaid, { say }: Speaker): string {
  if (typeof said === 'string') return say(`keep.store.${said}`);
  return say('place' in said ? `keep.store.${said.place}` : 'keep.store.own');
}

/** What an answer on a kitchen's year took for granted: its use, its store, the years tried, the weights. */
export function keepGrounds(
  year: KeepYear,
  store: StoreClimate,
  usual: UsualUse,
  speaker: Speaker,
): string[] {
  const { say, years, numberRange } = speaker;
  const { lots, household } = year;
  return [
    useSentence(household, usual, speaker),
    storeSentence(household.store, store, speaker),
    ...(lots.length > 0
      ? [
          say('keep.how.supplied', { years: years(year.suppliedYearsShare, year.years) }),
          say('keep.how.weights', { gram: numberRange(...standFigures.seedsPerGram.value) }),
        ]
      : []),
  ];
}

function useSentence(
  { people, gramsPerWeek }: Household,
  usual: UsualUse,
  { say, quantity }: Speaker,
): string {
  const week = quantity('crop', gramsPerWeek / 1000);
  if (!usual) return say('keep.how.use.given', { week, people });
  const { gramsPerPerson, source } = usual;
  return say('keep.how.use.usual', { week, people, each: quantity('bulbMass', gramsPerPerson), source });
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

function endsOf(values: Float64Array): [number, number] {
  return [Math.min(...values), Math.max(...values)];
}
