import { offerOfOwn, offersOf } from '@neckfall/answers';
import { type Colour, type Cultivar, colours, cultivars } from '@neckfall/data';
import {
  type DayLengthClass,
  dayLengthClasses,
  type Offer,
  type OwnCultivar,
  type Site,
  type StartMethod,
  startMethods,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { type GardenFile, readGardenFile } from '../files/garden-file.ts';
import { refuse } from '../refusal/refusal.ts';
import { parseChoice } from '../values/choice.ts';
import { parseNumber } from '../values/number.ts';
import { findBulbOnion, packetOf } from './onion-options.ts';

export type RawWhichOptions = {
  start?: string;
  class?: string;
  colour?: string;
  keeps?: string;
  mild?: boolean;
  have?: string;
  limit?: string;
  garden?: string;
};

/** Which onions are to be chosen among; null: any. */
export type Wanted = {
  start: StartMethod | null;
  class: DayLengthClass | null;
  colour: Colour | null;
  /** Months that it must keep at least. */
  keepsMonths: number | null;
  mild: boolean;
  /** Names, as far as the grower has given any. */
  have: readonly string[] | null;
  limit: number;
  garden: GardenFile | null;
};

const defaultLimit = 20;

export function readWanted(raw: RawWhichOptions, speaker: Speaker): Wanted {
  return {
    start: raw.start === undefined ? null : parseChoice(raw.start, '--start', startMethods, speaker),
    class: raw.class === undefined ? null : parseChoice(raw.class, '--class', dayLengthClasses, speaker),
    colour: raw.colour === undefined ? null : parseChoice(raw.colour, '--colour', colours, speaker),
    keepsMonths:
      raw.keeps === undefined
        ? null
        : parseNumber(raw.keeps, { field: '--keeps', min: 0, max: 12, unit: 'months' }),
    mild: raw.mild ?? false,
    have: raw.have === undefined ? null : readNames(raw.have),
    limit:
      raw.limit === undefined
        ? defaultLimit
        : parseNumber(raw.limit, { field: '--limit', min: 1, max: 1000, whole: true }),
    garden: raw.garden === undefined ? null : readGardenFile(raw.garden, speaker),
  };
}

function readNames(text: string): string[] {
  const names = text
    .split(/[,;]/)
    .map((name) => name.trim())
    .filter((name) => name !== '');
  if (names.length === 0) throw refuse('missing-value', { field: '--have', expected: '<names>' });
  return names;
}

/** The onions wanted: named ones, else all of the catalogue and the garden file that can be grown. */
export function offersWanted(wanted: Wanted, site: Site, year: number): Offer[] {
  const { own, known } = named(wanted);
  const ownWanted = own.filter(
    (onion) =>
      wanted.colour === null && !wanted.mild && (wanted.class === null || onion.class === wanted.class),
  );
  const knownWanted = known.filter(
    (cultivar) =>
      (wanted.class === null || cultivar.class === wanted.class) &&
      (wanted.colour === null || cultivar.colour === wanted.colour) &&
      (!wanted.mild || cultivar.mild === true),
  );
  return [...ownWanted.map((onion) => offerOfOwn(onion, site, year)), ...offersOf(knownWanted)]
    .filter(({ keepsMonths }) => wanted.keepsMonths === null || keepsMonths[0] >= wanted.keepsMonths)
    .map((offer) => ({
      ...offer,
      starts: offer.starts.filter((start) => wanted.start === null || start === wanted.start),
    }));
}

function named({ have, garden }: Wanted): { own: OwnCultivar[]; known: readonly Cultivar[] } {
  const own = garden?.garden.cultivars ?? [];
  if (have === null) {
    const canGrow = own.filter((onion) => onion.class !== null || onion.packetHours !== null);
    return { own: canGrow, known: cultivars };
  }
  const found = { own: [] as OwnCultivar[], known: [] as Cultivar[] };
  for (const name of have) {
    const mine = garden?.find(name);
    if (mine) {
      packetOf(mine, name, '--have');
      found.own.push(mine);
    } else found.known.push(findBulbOnion(name, '--have', garden));
  }
  return found;
}
