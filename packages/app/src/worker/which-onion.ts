import { offerOfPacket } from '@neckfall/answers';
import {
  type Choice,
  civilDate,
  type DayLengthClass,
  type GrowingOptions,
  type GrownKind,
  growKinds,
  type KindNow,
  kindNow,
  kindsOf,
  likeliestClass,
  type Offer,
  type Packet,
  type PacketPlant,
  plantOfPacket,
  rankChoices,
} from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

export type WhichOnionAsked = {
  site: SiteAsked;
  /** One onion by its plant, or by what its packet says, be that nothing. */
  onion:
    | Offer
    | (Pick<Offer, 'name' | 'starts'> & { packet: Packet; keepsMonths: Offer['keepsMonths'] | null });
  firstDay: number;
  options: GrowingOptions;
};
export type WhichOnionReply = {
  /** What was made of the packet; null for an onion that is known. */
  read: PacketPlant | null;
  /** The class it was taken for where nothing tells it. */
  taken: DayLengthClass | null;
  /** Its ways of starting, the best first. */
  choices: Choice[];
  grown: GrownKind[];
  /** The best of them that is in time today, by its place among the choices. */
  now: KindNow | null;
};

/** One onion, started in each of its ways. */
export function whichOnion({ site: asked, onion, firstDay, options }: WhichOnionAsked): WhichOnionReply {
  const site = siteOf(asked);
  let taken: DayLengthClass | null = null;
  let read: PacketPlant | null = null;
  let offer: Offer;
  if ('packet' in onion) {
    const { packet } = onion;
    if (packet.class === null && packet.hours === null)
      taken = likeliestClass(site, onion.starts, firstDay, options);
    read = plantOfPacket(site, { ...packet, class: taken ?? packet.class }, civilDate(firstDay).year);
    offer = offerOfPacket(onion, read);
  } else offer = onion;
  const steps = growKinds(site, kindsOf([offer]), firstDay, options);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const choices = rankChoices(site, step.value);
  const now = kindNow(
    site,
    choices.map(({ kind }) => kind),
    firstDay,
    options,
  );
  return { read, taken, choices, grown: step.value, now };
}
