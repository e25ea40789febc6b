import {
  type GardenKitchen,
  gardenRanges,
  type Household,
  type Like,
  likes,
  type StoreSaid,
  seedAges,
  storePlaces,
  storeWith,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { refuse } from '../refusal/refusal.ts';
import { parseChoice } from '../values/choice.ts';
import { parseNumber, readNumber } from '../values/number.ts';

/** Options of `keep` alone, as commander gives them. */
export type RawKeepOptions = {
  people?: string;
  gramsPerWeek?: string;
  store?: string;
  like?: string;
  seedAge?: string;
  place?: string;
};

/** A household as it was said; null where what it eats was not. */
export type KitchenAsked = Omit<Household, 'gramsPerWeek'> & { gramsPerWeek: number | null };

/** Where nothing was said of the store. */
export const usualStore = 'cellar';

/** What the options say goes before what the kitchen of a garden does. @param file the garden; null: there is none */
export function readKitchen(
  raw: RawKeepOptions,
  kitchen: GardenKitchen | null,
  file: string | null,
  speaker: Speaker,
): KitchenAsked {
  const number = (text: string | undefined, field: string, of: 'people' | 'gramsPerWeek', unit?: string) => {
    const [min, max] = gardenRanges[of];
    return text === undefined ? null : parseNumber(text, { field, min, max, ...(unit && { unit }) });
  };
  const people = number(raw.people, '--people', 'people') ?? kitchen?.people ?? null;
  const gramsPerWeek = number(raw.gramsPerWeek, '--grams-per-week', 'gramsPerWeek', 'g');
  const store = raw.store === undefined ? storeOf(kitchen) : readStore(raw.store, kitchen, speaker);
  const liked = raw.like === undefined ? (kitchen?.likes ?? []) : readLikes(raw.like, speaker);
  if (people === null)
    throw refuse('keep-people', {
      field: '--people',
      values: { garden: file === null ? 'no' : 'yes', file: file ?? '' },
    });
  // what a kitchen of other people eats is not what these do
  const isOfKitchen = raw.people === undefined || people === kitchen?.people;
  return {
    people,
    gramsPerWeek: gramsPerWeek ?? (isOfKitchen ? (kitchen?.gramsPerWeek ?? null) : null),
    store,
    likes: liked,
    seedAge: raw.seedAge === undefined ? null : parseChoice(raw.seedAge, '--seed-age', seedAges, speaker),
  };
}

/** The store of a garden's kitchen, else the usual one. */
export function storeOf(kitchen: GardenKitchen | null): StoreSaid {
  const { store, storeTempC: tempC, storeHumidityPct: humidityPct, storeReadings } = kitchen ?? {};
  if (typeof tempC === 'number' && typeof humidityPct === 'number') return { tempC, humidityPct };
  return storeWith(store ?? usualStore, storeReadings ?? []);
}

const field = '--store';

/** A usual store by its name, with what the garden has read there, or its own air as `C,RH`, with decimal commas `C;RH`. */
export function readStore(text: string, kitchen: GardenKitchen | null, speaker: Speaker): StoreSaid {
  if (!/[\d,;]/.test(text))
    return storeWith(parseChoice(text, field, storePlaces, speaker), kitchen?.storeReadings ?? []);
  const parts = text.split(text.includes(';') ? ';' : ',');
  if (parts.length !== 2 || parts.some((part) => readNumber(part) === null)) {
    const expected = speaker.any(storePlaces);
    throw refuse('keep-store-form', { field, values: { value: text }, expected });
  }
  const within = (part: string, [min, max]: readonly [number, number], unit: string) =>
    parseNumber(part, { field, min, max, unit });
  return {
    tempC: within(parts[0], gardenRanges.storeTempC, '°C'),
    humidityPct: within(parts[1], gardenRanges.storeHumidityPct, '%'),
  };
}

/** Each once, in the order of {@link likes}. */
function readLikes(text: string, speaker: Speaker): Like[] {
  const words = text
    .split(/[,;]/)
    .map((word) => word.trim())
    .filter((word) => word !== '');
  if (words.length === 0) throw refuse('missing-value', { field: '--like', expected: '<words>' });
  const said = new Set(words.map((word) => parseChoice(word, '--like', likes, speaker)));
  return likes.filter((like) => said.has(like));
}
