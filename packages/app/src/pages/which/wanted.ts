import { offersOf } from '@neckfall/answers';
import { type Cultivar, cultivars, findCultivar } from '@neckfall/data';
import { classOfType, type Kind, kindsOf, type Offer } from '@neckfall/engine';
import type { Asked } from '../../address/address-form.ts';
import { findOwn } from '../../garden/own-onion.ts';

export type Filters = Pick<Asked, 'onlyClass' | 'colour' | 'keeps' | 'mild' | 'onlyStart' | 'have'>;

/** Every way of every onion we know: what is grown once for a place, however the list is narrowed. */
export function allKinds(own: readonly Offer[]): readonly Kind[] {
  if (own.length > 0) return kindsOf([...own, ...offersOf(cultivars)]);
  kinds ??= kindsOf(offersOf(cultivars));
  return kinds;
}
let kinds: readonly Kind[] | null = null;
const bulbOnions = cultivars.filter(({ kind }) => kind === 'bulb-onion').length;

export type Wanted = {
  kinds: readonly Kind[];
  /** Onions by name among them. */
  names: number;
  /** Names that were asked for and are not known. */
  unknown: readonly { name: string; nearest: readonly string[] }[];
};

/** The onions that are left when the list is narrowed; by the same rules as the command line. */
export function wantedOf(filters: Filters, own: readonly Offer[]): Wanted {
  if (Object.values(filters).every((filter) => filter === null)) {
    return { kinds: allKinds(own), names: bulbOnions + own.length, unknown: [] };
  }
  const { onlyClass, colour, keeps, mild, onlyStart, have } = filters;
  const { mine, known, unknown } = named(have, own);
  // of one's own the skin and the taste are not known
  const ownWanted = mine.filter(
    ({ type }) => colour === null && mild === null && (onlyClass === null || classOfType[type] === onlyClass),
  );
  const knownWanted = offersOf(
    known.filter(
      (cultivar) =>
        (onlyClass === null || cultivar.class === onlyClass) &&
        (colour === null || cultivar.colour === colour) &&
        (mild === null || cultivar.mild === true),
    ),
  );
  const offers = [...ownWanted, ...knownWanted]
    .filter(({ keepsMonths }) => keeps === null || keepsMonths[0] >= keeps)
    .map((offer) => ({ ...offer, starts: startsOf(offer, onlyStart) }))
    .filter(({ starts }) => starts.length > 0);
  return { kinds: kindsOf(offers), names: offers.length, unknown };
}

function startsOf({ starts }: Offer, start: Filters['onlyStart']): Offer['starts'] {
  return start === null ? starts : starts.filter((way) => way === start);
}

function named(
  have: Filters['have'],
  own: readonly Offer[],
): { mine: readonly Offer[]; known: readonly Cultivar[]; unknown: Wanted['unknown'] } {
  if (have === null) return { mine: own, known: cultivars, unknown: [] };
  const mine: Offer[] = [];
  const known: Cultivar[] = [];
  const unknown: { name: string; nearest: readonly string[] }[] = [];
  for (const name of have) {
    const onion = findOwn(own, name);
    const found = findCultivar(name);
    if (onion) mine.push(onion);
    else if (found.match) known.push(found.match);
    else unknown.push({ name, nearest: found.nearest });
  }
  // nothing known of all that was named: that narrows nothing
  if (mine.length === 0 && known.length === 0) return { mine: own, known: cultivars, unknown };
  return { mine, known: [...new Set(known)], unknown };
}
