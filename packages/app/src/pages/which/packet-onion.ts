import { offersOf } from '@neckfall/answers';
import type { Cultivar } from '@neckfall/data';
import { type Offer, type Packet, type StartMethod, startMethods } from '@neckfall/engine';
import type { WhichOnionAsked } from '../../worker/which-onion.ts';

/**
 * What is in the hand, for the engine: a known onion, or what the packet says; null where that is too little.
 *
 * @param held ways of starting that what is in the hand leaves open; empty where nothing was said of it
 */
export function packetOnion(
  cultivar: Cultivar | null,
  packet: Packet,
  name: string,
  held: readonly StartMethod[],
  keepsMonths: Offer['keepsMonths'] | null = null,
): WhichOnionAsked['onion'] | null {
  const starts = held.length > 0 ? held : startMethods;
  if (cultivar) {
    const [offer] = offersOf([cultivar]);
    return { ...offer, starts: held.length > 0 ? held : offer.starts };
  }
  if (packet.class === null && packet.hours === null && held.length === 0) return null;
  return { name, packet, starts, keepsMonths };
}
