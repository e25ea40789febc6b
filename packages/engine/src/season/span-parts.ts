import { quantileSorted } from '../math/index.ts';
import { bulbDiameterMm } from '../plant/index.ts';
import { stage } from './outcome.ts';
import { runnerOf } from './run.ts';
import type { Site } from './site.ts';
import type { SeasonSummary, Spread } from './summary.ts';

/** How far apart the ends of 8 seasons in 10 lie, and what makes them lie so. */
export type SpanPart = {
  /** As answered. */
  all: number;
  /** By the weather of the year alone, with plants in the middle of their kind. */
  weather: number;
  /** By what is not known of the kind alone: independent causes add up by their squares. */
  kind: number;
};

/** Null where the thing happens in too few seasons for a span. */
export type SpanParts = { neckFallDays: SpanPart | null; bulbDiameterMm: SpanPart | null };

/** Fewer seasons than this have no ends to speak of. */
const leastSeasons = 5;
/** As with the date itself: what comes in fewer than half of the seasons has no span. */
const leastShare = 0.5;

/** The risk of the year told apart from what is not known of the kind: the seasons of an answer again, without draws. */
export function spanParts(
  site: Site,
  { plan, neckFall, onset, bulbDiameterMm: bulbMm }: SeasonSummary,
): SpanParts {
  const middling = Array.from({ length: site.years }, () => site.middleDraw);
  const runner = runnerOf({ ...site, draws: () => middling }, plan);
  const { dryMatterShare } = runner.crop.type;
  const fell: number[] = [];
  const bulbs: number[] = [];
  for (let year = 0; year < site.years; year++) {
    const { reached, fellOn, bulbDryG } = runner.quickSeason(year);
    if (reached === stage.fallen) fell.push(fellOn);
    if (reached >= stage.onset) bulbs.push(bulbDiameterMm(bulbDryG / dryMatterShare));
  }
  return {
    neckFallDays: partsOf(neckFall.days, neckFall.share, fell, site.years),
    bulbDiameterMm: partsOf(bulbMm, onset.share, bulbs, site.years),
  };
}

function partsOf(spread: Spread | null, share: number, byWeather: number[], years: number): SpanPart | null {
  const least = Math.max(leastSeasons, leastShare * years);
  if (spread === null || share * years < least || byWeather.length < least) return null;
  const all = spread.p90 - spread.p10;
  const sorted = Float64Array.from(byWeather).sort();
  // so few years may by chance lie a little wider without the draws
  const weather = Math.min(all, quantileSorted(sorted, 0.9) - quantileSorted(sorted, 0.1));
  return { all, weather, kind: Math.sqrt(all ** 2 - weather ** 2) };
}
