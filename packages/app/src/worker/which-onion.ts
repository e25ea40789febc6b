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
  onionAt,
  type Packet,
  type PacketPlant,
  rankChoices,
  type StartMethod,
  type StartNow,
  surveyWays,
  type WaySurvey,
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
  /** Its ways of starting, the best of the year first; the one that is in time with its season of today. */
  choices: Choice[];
  /** The same, each at its best start of the year. */
  grown: GrownKind[];
  /** The best of them that is in time today, by its place among the choices. */
  now: KindNow | null;
};

/** One onion, started in each of its ways. */
export function whichOnion({ site: asked, onion, firstDay, options }: WhichOnionAsked): WhichOnionReply {
  const site = siteOf(asked);
  const { starts } = onion;
  let taken: DayLengthClass | null = null;
  let crop: CropAsked;
  if ('packet' in onion) {
    const { class: printed, hours } = onion.packet;
    if (printed === null && hours === null) taken = likeliestClass(site, starts, firstDay, options);
    crop = { packet: { ...onion.packet, class: taken ?? printed }, year: civilDate(firstDay).year };
  } else crop = onion;
  const ways = surveyWays(site, waysOf(site, crop, starts), firstDay, options);
  const soon = ways.now();
  const offers = starts.map((start) => {
    const plant = plantOf(ways, soon, start);
    return { ...('packet' in onion ? offerOfPacket(onion, plant) : onion), starts: [start] };
  });
  const steps = growKinds(site, kindsOf(offers), firstDay, options);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const grown = step.value;
  const ranked = rankChoices(site, grown);
  const at = ranked.findIndex(({ kind }) => kind.start === soon?.summary.plan.start);
  const choices = ranked.map((choice, place) =>
    soon && place === at ? { ...choice, summary: soon.summary } : choice,
  );
  const told = soon?.summary ?? choices[0].summary;
  const read = 'packet' in onion ? onionAt(site, crop, told.plan) : null;
  return { read, taken, choices, grown, now: soon && { at, ...soon } };
}

/** What a packet of a class holds, started one way: that of today, else what does best in the year. */
function plantOf(ways: WaySurvey, soon: StartNow | null, start: StartMethod): Pick<Offer, 'type' | 'traits'> {
  const isSoon = soon?.summary.plan.start === start;
  const { type, traits } = (isSoon ? soon : ways.best((way) => way.start === start)).summary.plan;
  return { type, traits };
}
