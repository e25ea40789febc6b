import { climateDayOf, type DayNumber } from '../calendar/index.ts';
import { classOfType, hoursFromHome, plantValuesOf, type StartMethod } from '../plant/index.ts';
import { fullSizeDryG, type Plan, type SeasonSummary, type Site } from '../season/index.ts';
import { type Harvest, harvestOf } from './harvest.ts';
import { isOnSale } from './on-sale.ts';
import { isPractised } from './practised.ts';
import { isAutumnStart } from './type-for-class.ts';
import { hindranceOn } from './workable.ts';

/** What a way of growing is worth, in good seasons of one; the parts add up. */
export type WorthParts = {
  /** Share of good seasons, and of small bulbs in part. */
  chance: number;
  /** Plants lost to flower; never positive. */
  flower: number;
  /** Size up to a full bulb's dry matter, so that a watery bulb does not win on looks. */
  size: number;
  keeping: number;
  /** Weeks of care beyond a summer's; never positive, like the rest. */
  time: number;
  /** Thinning and weeding of rows sown in place, trays to tend, plants to order in time. */
  work: number;
  /** A bed too cold to be worked at the start, or to take seedlings in time. */
  coldBed: number;
  /** Tops that go over in weather too cool to dry bulbs. */
  drying: number;
  /** What growers of the district do, where that is published. */
  practice: number;
  /** Sets, and kinds of another latitude, that shops seldom have, and what they have at no such time of year. */
  scarce: number;
};

/** In good seasons of one. All are our choice: what a gardener may want, so no fit may touch them. */
export const worthWeights = {
  /** A season of small bulbs against a good one. */
  small: 0.3,
  /** A full bulb against none. */
  size: 0.3,
  /** A hard keeper against a sweet onion. */
  keeping: 0.1,
  /** Every plant in flower against none: a bulb lost each. */
  flower: 0.3,
  /** A year of care, beyond the half summer that an onion takes. */
  careYear: 0.35,
  /** About what thirty years cannot tell: local practice settles ties. */
  practice: 0.15,
} as const;
const easyDays = 150;
/** What is hard to come by (common practice, no source): most sets on sale are long-day types and, in autumn, kinds that winter, ... */
const scarceCost = 0.2;
/** ... or none to be had at all ... */
const offSaleCost = 1;
/** ... and kinds of another latitude the more, the farther off they are at home. */
const scarcePerH = 0.2;
/** Homes have no sharp edges: the cost is whole some 25 km beyond one, in summers a few minutes longer or shorter. */
const strangePerH = 2;
const workOf: Readonly<Record<StartMethod, number>> = {
  'direct-seed': 0.02,
  'raised-seedlings': 0.03,
  'bought-transplants': 0.03,
  sets: 0,
};
/** A start for a bed that cannot be worked is no start. */
const coldBedCost = 1;
/** Bulbs dry off well from this mean temperature on (memory). */
const dryingC = 15;
const coolDryingPerC = 0.02;
const coolDryingMost = 0.2;

/** Months that sweet, watery onions and the hardest keepers last (memory); between them more is better. */
const shortestKeep = 1.5;
const longestKeep = 9;
/** Onions of more dry matter keep longer (husbandry figures: sweet 8 %, storage 12 %). */
const sweetShare = 0.08;
const storageShare = 0.12;

/** Ranks ways to grow a crop. @param keepsMonths usual keeping where known; null: taken from dry matter */
export function worth(site: Site, summary: SeasonSummary, keepsMonths: number | null = null): number {
  return total(worthParts(site, summary.plan, harvestOf(site, summary), keepsMonths));
}

export function total(parts: WorthParts): number {
  let sum = 0;
  for (const part of Object.values(parts)) sum += part;
  return sum;
}

export function worthParts(site: Site, plan: Plan, harvest: Harvest, keepsMonths: number | null): WorthParts {
  const { dryMatterShare } = plantValuesOf(site.values, plan);
  const keeps =
    keepsMonths === null
      ? (dryMatterShare - sweetShare) / (storageShare - sweetShare)
      : (keepsMonths - shortestKeep) / (longestKeep - shortestKeep);
  const parts = {
    chance: 0,
    flower: 0,
    size: 0,
    keeping: worthWeights.keeping * Math.max(0, Math.min(1, keeps)),
    time: 0,
    work: -workOf[plan.start],
    coldBed: waitsForBed(site, plan) ? -coldBedCost : 0,
    drying: 0,
    practice: isPractised(site, plan) ? worthWeights.practice : 0,
    scarce: -scarcity(site, plan),
  };
  reapInto(parts, site, plan, harvest);
  return parts;
}

/** Puts what hangs on a harvest into the parts of its plan, in place. */
export function reapInto(parts: WorthParts, site: Site, plan: Plan, harvest: Harvest): void {
  parts.chance = harvest.goodShare + worthWeights.small * harvest.smallShare;
  parts.flower = -worthWeights.flower * harvest.boltedShare;
  parts.size = worthWeights.size * Math.min(1, harvest.dryG / fullSizeDryG);
  parts.time = (-worthWeights.careYear * Math.max(0, (harvest.days ?? 365) - easyDays)) / 365;
  parts.drying =
    harvest.days === null ? -coolDryingMost : -coolDryingCost(site, plan.startDay + harvest.days);
}

function waitsForBed(site: Site, { start, startDay }: Plan): boolean {
  const hindrance = hindranceOn(site, start, startDay);
  return hindrance === 'cold-bed' || hindrance === 'long-tray';
}

function scarcity(site: Site, { type, start, startDay }: Plan): number {
  if (!isOnSale(site, start, startDay)) return offSaleCost;
  const winters = isAutumnStart(startDay, site.climate.latitudeDeg);
  const awayH = hoursFromHome(type, site.longestDayH, winters);
  const rareSets = start === 'sets' && classOfType[type] !== 'long' && !(winters && type === 'intermediate');
  const strange = rareSets ? scarceCost : Math.min(scarceCost, strangePerH * awayH);
  return strange + scarcePerH * awayH;
}

function coolDryingCost(site: Site, neckFallDay: DayNumber): number {
  const meanC = site.mean('none').tempMeanC[climateDayOf(neckFallDay)];
  return Math.min(coolDryingMost, coolDryingPerC * Math.max(0, dryingC - meanC));
}
