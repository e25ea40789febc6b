import { fullSizeDryG, type SeasonSummary, type Site } from '../season/index.ts';

/** What counts beside the chance of a good crop (our choice): a full-sized bulb, and weeks of care spared. */
const sizeWeight = 0.3;
const careWeightPerYear = 0.35;

/**
 * Ranks ways to grow a crop: share of good seasons, plus size up to a full bulb's dry matter (so that a watery
 * bulb does not win on looks), minus the time from the start to neck fall.
 */
export function worth(site: Site, summary: SeasonSummary): number {
  const { type, startDay } = summary.plan;
  const dryG = (summary.bulbMassG.p50 ?? 0) * site.values.types[type].dryMatterShare;
  const days = summary.neckFall.p50 === null ? 365 : summary.neckFall.p50 - startDay;
  return (
    summary.seasonShares.good +
    sizeWeight * Math.min(1, dryG / fullSizeDryG) -
    (careWeightPerYear * days) / 365
  );
}
