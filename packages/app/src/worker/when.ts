import {
  type CropAsked,
  civilDate,
  cropToday,
  neededSunUpH,
  type OpenPlan,
  onionAt,
  type PacketNote,
  planDefaults,
  plantValuesOf,
  type TodayAnswer,
  tryStarts,
  usesAt,
  type WhenAnswer,
} from '@neckfall/engine';
import { type SiteAsked, siteOf } from './site.ts';

export type WhenAsked = {
  site: SiteAsked;
  crop: CropAsked;
  /** A day of the year whose 52 weeks are tried. */
  today: number;
  plan: Pick<OpenPlan, 'start'> & Partial<Omit<OpenPlan, 'type' | 'traits'>>;
};
export type WhenReply = {
  answer: WhenAnswer;
  /** What this start is worth today. */
  now: TodayAnswer;
  /** What was made of a packet. */
  notes: PacketNote[];
  /** Sun-up hours from which this onion's bulbs are called up. */
  needSunUpH: number;
};

/** The year tried week by week, and what a start is worth today. */
export function when({ site: asked, crop, today, plan: { start, ...practice } }: WhenAsked): WhenReply {
  const site = siteOf(asked);
  const { notes, ...onion } = onionAt(site, crop);
  const { criticalPhotoperiodH } = plantValuesOf(site.values, onion);
  const plan = { ...planDefaults, ...practice, start, ...onion };
  return {
    answer: tryStarts(site, plan, civilDate(today).year, usesAt(site, crop, start) ?? undefined),
    now: cropToday(site, crop, onion, start, today, practice),
    notes,
    needSunUpH: neededSunUpH(site, criticalPhotoperiodH),
  };
}
