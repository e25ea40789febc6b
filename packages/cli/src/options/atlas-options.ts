import { type AtlasRegionName, atlasRegionNames, atlasRegions } from '@neckfall/answers';
import { countryBox, type Gazetteer } from '@neckfall/data';
import { dayLengthClasses, type Region, startMethods } from '@neckfall/engine';
import { type MapShows, mapShows } from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import { nearest } from '../refusal/nearest.ts';
import { refuse } from '../refusal/refusal.ts';
import { parseChoice } from '../values/choice.ts';
import { parseNumber, readNumber } from '../values/number.ts';
import { type RawOutputOptions, type RawPlaceOptions, readSetting } from './place-options.ts';

/** Options of a map, as commander gives them. */
export type RawAtlas = Pick<RawPlaceOptions, 'sun' | 'warmer' | 'years' | 'seed' | 'today'> &
  RawOutputOptions & {
    region?: string;
    step?: string;
    class?: string;
    start?: string;
    every?: boolean;
    shard?: string;
    shows?: string;
  };

/** Weather years at a point unless asked otherwise: a map is looked at as a whole. */
const usualYears = '10';

/** What a map is of, as it was asked. */
export function readAtlasOptions(raw: RawAtlas, gazetteer: () => Gazetteer, speaker: Speaker) {
  const { years, seed, warmerC, sunHours, today } = readSetting({ ...raw, years: raw.years ?? usualYears });
  const choice = <Word extends string>(text: string | undefined, field: string, words: readonly Word[]) =>
    text === undefined ? null : parseChoice(text, field, words, speaker);
  return {
    ...readRegion(raw.region ?? 'all', gazetteer),
    stepDeg: parseNumber(raw.step ?? '1', { field: '--step', min: 0.1, max: 30, unit: '°' }),
    class: choice(raw.class, '--class', dayLengthClasses),
    start: choice(raw.start, '--start', startMethods),
    isFull: raw.every === true,
    years,
    seed,
    warmerC,
    sunHours,
    from: today,
  };
}

/** A part of the Earth by one of our names, by its edges, or a country by name or code. */
function readRegion(text: string, gazetteer: () => Gazetteer) {
  const typed = text.trim().toLowerCase();
  const name = typed === 'world' ? 'all' : typed;
  if (isRegionName(name)) return { region: name, box: atlasRegions[name], country: null };
  const edges = text.split(text.includes(';') ? ';' : ',').map(readNumber);
  if (edges.length > 1 || edges[0] !== null)
    return { region: text.trim(), box: boxOf(text, edges), country: null };
  const found = countryBox(gazetteer(), text);
  if (!found) {
    throw refuse('map-region', {
      field: '--region',
      values: { value: text },
      nearest: nearest(typed, atlasRegionNames),
    });
  }
  const { country, ...box } = found;
  return { region: text.trim(), box, country };
}

function isRegionName(name: string): name is AtlasRegionName {
  return Object.hasOwn(atlasRegions, name);
}

function boxOf(text: string, edges: readonly (number | null)[]): Region {
  const [southDeg, westDeg, northDeg, eastDeg] = edges as number[];
  const isBox =
    edges.length === 4 &&
    !edges.includes(null) &&
    southDeg <= northDeg &&
    Math.max(Math.abs(southDeg), Math.abs(northDeg)) <= 90 &&
    Math.max(Math.abs(westDeg), Math.abs(eastDeg)) <= 180;
  if (!isBox) throw refuse('map-box', { field: '--region', values: { value: text } });
  return { southDeg, westDeg, northDeg, eastDeg };
}

/** `2/8`: the second of eight. */
export function readShard(text: string | undefined): { number: number; of: number } {
  if (text === undefined) return { number: 1, of: 1 };
  const [, number, of] = (/^(\d{1,5})\/(\d{1,5})$/.exec(text.trim()) ?? []).map(Number);
  if (!(number >= 1 && number <= of))
    throw refuse('map-shard', { field: '--shard', values: { value: text } });
  return { number, of };
}

/** What parts of a map say themselves. */
const saidByParts = [
  'region',
  'step',
  'class',
  'start',
  'every',
  'shard',
  'today',
  'sun',
  'warmer',
  'years',
  'seed',
] as const;

/** @throws Refusal of an option that does not go with `join` */
export function refuseBesideJoin(raw: RawAtlas, { say }: Speaker): void {
  const given = saidByParts.find((name) => raw[name] !== undefined);
  if (given === undefined) return;
  const field = `--${given}`;
  throw refuse('contradiction', { field, values: { other: 'join', why: say('clash.parts-say-all') } });
}

/** What of the onions a picture of the map shows. */
export function readShows({ shows }: RawAtlas, speaker: Speaker): MapShows {
  return shows === undefined ? 'kind' : parseChoice(shows, '--shows', mapShows, speaker);
}
