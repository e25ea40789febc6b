import { offerOfPacket } from '@neckfall/answers';
import {
  type Choice,
  type CropAsked,
  civilDate,
  type DayLengthClass,
  type GrowingOptions,
  type GrownKind,
  growKinds,
  type KindNow,
  kindsOf,
  likeliestClass,
  type Offer,
  type Packet,
  type PacketPlant,
  plantOfPacket,
  rankChoices,
  surveyWays,
  waysOf,
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
  let crop: CropAsked;
  if ('packet' in onion) {
    const { class: printed, hours } = onion.packet;
    if (printed === null && hours === null) taken = likeliestClass(site, onion.starts, firstDay, options);
    const packet = { ...onion.packet, class: taken ?? printed };
    const { year } = civilDate(firstDay);
    read = plantOfPacket(site, packet, year);
    offer = offerOfPacket(onion, read);
    crop = { packet, year };
  } else {
    offer = onion;
    crop = onion;
  }
  const steps = growKinds(site, kindsOf([offer]), firstDay, options);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const choices = rankChoices(site, step.value);
  const soon = surveyWays(site, waysOf(site, crop, offer.starts), firstDay, options).now();
  const at = choices.findIndex(({ kind }) => kind.start === soon?.summary.plan.start);
  return { read, taken, choices, grown: step.value, now: soon && { at, ...soon } };
}
