import { offersOf } from '@neckfall/answers';
import type { Cultivar } from '@neckfall/data';
import { type Offer, type Packet, startMethods } from '@neckfall/engine';
import type { WhichOnionAsked } from '../../worker/which-onion.ts';

/** What is in the hand, for the engine: a known onion, or what the packet says; null where that is too little. */
export function packetOnion(
  cultivar: Cultivar | null,
  packet: Packet,
  name: string,
  keepsMonths: Offer['keepsMonths'] | null = null,
): WhichOnionAsked['onion'] | null {
  if (cultivar) return offersOf([cultivar])[0];
  if (packet.class === null && packet.hours === null) return null;
  return { name, packet, starts: startMethods, keepsMonths };
}
