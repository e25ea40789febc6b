import { offersOf } from '@neckfall/answers';
import { type Cultivar, type CultivarAnswer, cultivars, findCultivar } from '@neckfall/data';
import { type Kind, kindsOf, type Offer } from '@neckfall/engine';
import type { Asked } from '../../state/address-form.ts';

export type Filters = Pick<Asked, 'onlyClass' | 'colour' | 'keeps' | 'mild' | 'onlyStart' | 'have'>;

/** Every way of every onion we know: what is grown once for a place, however the list is narrowed. */
export function allKinds(): readonly Kind[] {
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
export function wantedOf(filters: Filters): Wanted {
  if (Object.values(filters).every((filter) => filter === null)) {
    return { kinds: allKinds(), names: bulbOnions, unknown: [] };
  }
  const { onlyClass, colour, keeps, mild, onlyStart, have } = filters;
  const { known, unknown } = named(have);
  const offers = offersOf(
    known.filter(
      (cultivar) =>
        (onlyClass === null || cultivar.class === onlyClass) &&
        (colour === null || cultivar.colour === colour) &&
        (mild === null || cultivar.mild === true),
    ),
  )
    .filter(({ keepsMonths }) => keeps === null || keepsMonths[0] >= keeps)
    .map((offer) => ({ ...offer, starts: startsOf(offer, onlyStart) }))
    .filter(({ starts }) => starts.length > 0);
  return { kinds: kindsOf(offers), names: offers.length, unknown };
}

function startsOf({ starts }: Offer, start: Filters['onlyStart']): Offer['starts'] {
  return start === null ? starts : starts.filter((way) => way === start);
}

function named(have: Filters['have']): { known: readonly Cultivar[]; unknown: Wanted['unknown'] } {
  if (have === null) return { known: cultivars, unknown: [] };
  const answers = have.map((name): { name: string; answer: CultivarAnswer } => ({
    name,
    answer: findCultivar(name),
  }));
  const known = answers.flatMap(({ answer }) => answer.match ?? []);
  const unknown = answers.flatMap(({ name, answer }) =>
    answer.match === null ? [{ name, nearest: answer.nearest }] : [],
  );
  // nothing known of all that was named: that narrows nothing
  return { known: known.length > 0 ? [...new Set(known)] : cultivars, unknown };
}
