import {
  type CropAsked,
  type GrowingOptions,
  neededSunUpH,
  type OnionType,
  onionAt,
  type PacketNote,
  type StartMethod,
  surveyWays,
  type TodayAnswer,
  tryStarts,
  type WhenAnswer,
  waysOf,
} from '@neckfall/engine';
import { grownSiteOf } from './grown-site.ts';
import type { SiteAsked } from './site.ts';

export type WhenAsked = {
  site: SiteAsked;
  crop: CropAsked;
  /** The 52 weeks from here on are tried. */
  today: number;
  start: StartMethod;
  options: GrowingOptions;
};
export type WhenReply = {
  answer: WhenAnswer;
  /** What this start is worth today. */
  now: TodayAnswer;
  /** The day to start: while it is in time, else the best of the year; and the type that is started then. */
  ahead: number;
  type: OnionType;
  /** What was made of a packet. */
  notes: PacketNote[];
  /** Sun-up hours from which the bulbs of what is started then are called up. */
  needSunUpH: number;
};

/** The year tried week by week, and what a start is worth today. */
export function when({ site: asked, crop, today, start, options }: WhenAsked): WhenReply {
  const site = grownSiteOf(asked);
  const { notes } = onionAt(site, crop);
  const ways = waysOf(site, crop, [start]);
  const survey = surveyWays(site, ways, today, options);
  const [now] = survey.today();
  const { plan, needPhotoperiodH } = (survey.now() ?? survey.best()).summary;
  return {
    answer: tryStarts(site, ways, options, today),
    now,
    ahead: plan.startDay,
    type: plan.type,
    notes,
    needSunUpH: neededSunUpH(site, needPhotoperiodH),
  };
}
