import { type KitchenKind, kindsOf, type OwnCultivar, type Site } from '@neckfall/engine';
import { offerOfOwn } from './offers.ts';

/** Kinds that keep so long, in the middle of their usual months, are keepers. */
const keeperMonths = 6;

/** Onions of the grower's own that a kitchen may be kept in, as plants of their type; those without class or hours are left out. */
export function ownKitchenKinds(own: readonly OwnCultivar[], site: Site, year: number): KitchenKind[] {
  const known = own.filter((onion) => onion.class !== null || onion.packetHours !== null);
  const offers = known.map((onion) => ({ ...offerOfOwn(onion, site, year), traits: null }));
  return kindsOf(offers).map((kind) => ({
    ...kind,
    likes: (kind.keepsMonths[0] + kind.keepsMonths[1]) / 2 >= keeperMonths ? ['keeper'] : [],
    winters: false,
  }));
}
