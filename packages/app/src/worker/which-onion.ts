import { offerOfPacket } from '@neckfall/answers';
import {
  type Choice,
  civilDate,
  type GrowingOptions,
  type GrownKind,
  growKinds,
  kindsOf,
  type Offer,
  type Packet,
  type PacketPlant,
  plantOfPacket,
  rankChoices,
} from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

export type WhichOnionAsked = {
  site: SiteAsked;
  /** One onion by its plant, or by what its packet says. */
  onion:
    | Offer
    | (Pick<Offer, 'name' | 'starts'> & { packet: Packet; keepsMonths: Offer['keepsMonths'] | null });
  firstDay: number;
  options: GrowingOptions;
};
export type WhichOnionReply = {
  /** What was made of the packet; null for an onion that is known. */
  read: PacketPlant | null;
  /** Its ways of starting, the best first. */
  choices: Choice[];
  grown: GrownKind[];
};

/** One onion, started in each of its ways. */
export function whichOnion({ site: asked, onion, firstDay, options }: WhichOnionAsked): WhichOnionReply {
  const site = siteOf(asked);
  const read = 'packet' in onion ? plantOfPacket(site, onion.packet, civilDate(firstDay).year) : null;
  const offer = 'packet' in onion ? offerOfPacket(onion, read!) : onion;
  const steps = growKinds(site, kindsOf([offer]), firstDay, options);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return { read, choices: rankChoices(site, step.value), grown: step.value };
}
