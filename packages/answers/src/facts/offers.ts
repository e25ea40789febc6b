import { type Cultivar, plantOf } from '@neckfall/data';
import { type Offer, type OwnCultivar, type PacketPlant, plantOfPacket, type Site } from '@neckfall/engine';

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

/** An onion known by its packet alone, from the plant that the packet most likely holds. */
export function offerOfPacket(
  {
    name,
    starts,
    keepsMonths,
  }: Pick<Offer, 'name' | 'starts'> & { keepsMonths: Offer['keepsMonths'] | null },
  { type, traits }: Pick<PacketPlant, 'type' | 'traits'>,
): Offer {
  return {
    name,
    type,
    traits,
    starts,
    keepsMonths: keepsMonths ?? ordinaryKeeping,
    keepsFrom: keepsMonths === null ? 'type' : 'cultivar',
  };
}

/** An own onion, for which there is seed; its plant is that of its packet at the place. Class or hours are needed. */
export function offerOfOwn(own: OwnCultivar, site: Site, year: number): Offer {
  const packet = { class: own.class, hours: own.packetHours, days: own.packetDays };
  return offerOfPacket(
    { name: own.name, starts: ['direct-seed', 'raised-seedlings'], keepsMonths: own.keepsMonths },
    plantOfPacket(site, packet, year),
  );
}
