import { classOfType, plantValuesOf } from '../plant/index.ts';
import { fullSizeDryG, type SeasonSummary, type Site } from '../season/index.ts';

/** What counts beside the chance of a good crop (our choice): a full-sized bulb, and weeks of care spared. */
const sizeWeight = 0.3;
const careWeightPerYear = 0.35;

/** Onions of more dry matter keep longer (husbandry figures: sweet 8 %, storage 12 %); worth of the difference. */
const keepWeight = 0.1;
const sweetShare = 0.08;
const storageShare = 0.12;
/** Most sets on sale are long-day types (common practice, no source): others are hard to come by. */
const rareSetsCost = 0.15;

/**
 * Ranks ways to grow a crop: share of good seasons, plus size up to a full bulb's dry matter (so that a watery
 * bulb does not win on looks), plus keeping, minus the time from the start to neck fall and what is hard to buy.
 */
export function worth(site: Site, summary: SeasonSummary): number {
  const { type, start, startDay } = summary.plan;
  const { dryMatterShare } = plantValuesOf(site.values, summary.plan);
  const dryG = (summary.bulbMassG.p50 ?? 0) * dryMatterShare;
  const keeps = (dryMatterShare - sweetShare) / (storageShare - sweetShare);
  const isRare = start === 'sets' && classOfType[type] !== 'long';
  const days = summary.neckFall.p50 === null ? 365 : summary.neckFall.p50 - startDay;
  return (
    summary.seasonShares.good +
    sizeWeight * Math.min(1, dryG / fullSizeDryG) +
    keepWeight * keeps -
    (isRare ? rareSetsCost : 0) -
    (careWeightPerYear * days) / 365
  );
}
