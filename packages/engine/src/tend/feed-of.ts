import {
  bedNitrogen,
  drawnNitrogenG,
  type FeedProduct,
  type FeedShare,
  isCoarse,
  limeAdvice,
  nitrogenRemovedGPerKg,
  nitrogenSuppliedGPerKg,
  nitrogenToGive,
  productG,
  readFeedProduct,
  splitFeeds,
} from '../bed/index.ts';
import { parseDay } from '../calendar/index.ts';
import type { Feed, FeedAnswer } from './feed-answer.ts';
import { feedChances } from './feed-chances.ts';
import type { TendedCrop } from './tended-crop.ts';

/** The bag most gardeners can buy, where none was named. */
const usualProduct = '10-10-10';
/** Of a crop that makes no bulbs: the poor crop of a planner, kg/m² (common practice, no source). */
const leafyAimKgPerM2 = 1.5;
/** Before bulbs begin a crop without them has leaves, for which one feed and one more do. */
const leafyFeeds = 2;

/** How a crop is to be fed, over what its bed gives and what it was fed so far. Nothing is fed once bulbs may begin. */
export function feedOf(crop: TendedCrop, options: { aimKgPerM2?: number | null } = {}): FeedAnswer {
  const { site, plan, summary, ground } = crop;
  const product = productOf(ground.feedProduct);
  const stopBy = summary.onset.days?.p10 ?? null;
  const aimSaid = options.aimKgPerM2 ?? null;
  const aimKgPerM2 = aimSaid ?? (summary.totalKgM2.p50 > 0 ? summary.totalKgM2.p50 : leafyAimKgPerM2);
  const fertility = ground.fertility ?? 'ordinary';
  const fromBed = bedNitrogen(fertility, ground.compostKgPerM2 ?? 0, ground.afterLegume ?? false);
  const toGiveGPerM2 = nitrogenToGive(aimKgPerM2, fromBed, plan.soil);
  const shares = splitFeeds(
    toGiveGPerM2,
    stopBy === null ? { ...product, mostFeeds: Math.min(leafyFeeds, product.mostFeeds) } : product,
    feedChances(site, plan, summary, product, stopBy),
    stopBy,
    isCoarse(plan.soil),
  );
  const givenGPerM2 = givenSoFar(crop);
  const feeds = feedsOf(shares, givenGPerM2 ?? 0, product, ground.areaM2);
  return {
    feeds,
    product: product.name,
    productSaid: ground.feedProduct,
    aimKgPerM2,
    aimSaid,
    takenGPerM2: nitrogenRemovedGPerKg * aimKgPerM2,
    nitrogenGPerM2: nitrogenSuppliedGPerKg * aimKgPerM2,
    fromBed,
    fromSoilGPerM2: fromBed.soil + fromBed.compost + fromBed.legume,
    fertility,
    isCoarse: isCoarse(plan.soil),
    toGiveGPerM2,
    leftOutGPerM2: toGiveGPerM2 - shares.reduce((sum, { nitrogenG }) => sum + nitrogenG, 0),
    givenGPerM2,
    besides: besidesOf(product, feeds),
    stopBy,
    lime: ground.soilPh === null ? null : limeAdvice(ground.soilPh),
  };
}

/** A name that a garden file has and we don't know counts as none. */
function productOf(name: string | null): FeedProduct {
  return (name === null ? null : readFeedProduct(name)) ?? readFeedProduct(usualProduct)!;
}

/** What was fed counts for the first feeds first: what was missed early is given with the next. */
function feedsOf(
  shares: readonly FeedShare[],
  given: number,
  product: FeedProduct,
  areaM2: number | null,
): Feed[] {
  let left = given;
  return shares.map(({ leaves, day, nitrogenG }, at) => {
    const covered = Math.min(left, nitrogenG);
    left -= covered;
    const gramsPerM2 = productG(product, nitrogenG - covered);
    return {
      number: at + 1,
      stage: leaves === null ? 'before-start' : `leaves-${leaves}`,
      day,
      nGPerM2: nitrogenG - covered,
      gramsPerM2,
      gramsForBed: areaM2 === null ? null : gramsPerM2 * areaM2,
    };
  });
}

/** Nitrogen fed so far, g per m²; null where it was fed on an area that is not known. */
function givenSoFar({ observations, ground, today }: TendedCrop): number | null {
  let grams = 0;
  for (const { date, fedProduct, fedG } of observations) {
    const day = parseDay(date);
    const product = fedProduct === undefined ? null : readFeedProduct(fedProduct);
    if (fedG !== undefined && product && day !== null && day <= today) grams += drawnNitrogenG(product, fedG);
  }
  if (grams === 0) return 0;
  return ground.areaM2 === null ? null : grams / ground.areaM2;
}

function besidesOf({ phosphatePct, potashPct }: FeedProduct, feeds: readonly Feed[]): FeedAnswer['besides'] {
  if (phosphatePct === null || potashPct === null) return null;
  const grams = feeds.reduce((sum, { gramsPerM2 }) => sum + gramsPerM2, 0);
  return { phosphateGPerM2: (grams * phosphatePct) / 100, potashGPerM2: (grams * potashPct) / 100 };
}
