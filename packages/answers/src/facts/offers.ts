import { type Cultivar, plantOf } from '@neckfall/data';
import { type Offer, type OwnCultivar, plantOfPacket, type Site } from '@neckfall/engine';

/** Onions of the catalogue as they may be chosen among; shallots and multipliers are not. */
export function offersOf(cultivars: readonly Cultivar[]): Offer[] {
  return cultivars
    .filter(({ kind }) => kind === 'bulb-onion')
    .map((cultivar) => {
      const { name, starts, keepsMonths, keepsFrom } = cultivar;
      return { name, ...plantOf(cultivar), starts, keepsMonths, keepsFrom };
    });
}

/** Where a garden file says nothing of keeping: that of an ordinary onion, months (memory). */
export const ordinaryKeeping = [4, 6] as const;

/** An own onion, for which there is seed; its plant is that of its packet at the place. Class or hours are needed. */
export function offerOfOwn(own: OwnCultivar, site: Site, year: number): Offer {
  const packet = { class: own.class, hours: own.packetHours, days: own.packetDays };
  const { type, traits } = plantOfPacket(site, packet, year);
  return {
    name: own.name,
    type,
    traits,
    starts: ['direct-seed', 'raised-seedlings'],
    keepsMonths: own.keepsMonths ?? ordinaryKeeping,
    keepsFrom: own.keepsMonths === null ? 'type' : 'cultivar',
  };
}
