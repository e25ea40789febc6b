import { climateYearDays } from '../calendar/index.ts';
import { clamp, normalCdf } from '../math/index.ts';
import { neckWeightShare } from './drying-air.ts';
import type { StoreClimate } from './store-climate.ts';
import type { StoreDraw } from './store-draw.ts';
import { ratesOf } from './store-rates.ts';

/** What goes into store: how long its kind usually keeps, and in what state it is. */
export type StoredLot = {
  /** Shortest and longest usual keeping of the kind, dry, cool and airy, months. */
  keepsMonths: readonly [number, number];
  /** Shares of the bulbs, 0…1. */
  thickNeckShare: number;
  bruisedShare: number;
};

/** A lot by day from the day it was lifted (index 0); shares of the bulbs lifted, which sum to 1. */
export type KeepingCurve = {
  sound: Float64Array;
  sprouted: Float64Array;
  rotten: Float64Array;
  /** Mass of a sound bulb as a share of what it weighed when lifted. */
  massShare: Float64Array;
};

/** Longer than any onion keeps. */
export const keptDays = 420;

const monthDays = 30.4;

/** Bulbs of a lot end their rest over so much of its length, one standard deviation (memory, adjustable). */
const restSpread = 0.15;

/** So much of the rest is deep (memory, adjustable; below 0.78, where published bulbs stirred). */
const deepShare = 0.65;

/** Months near 0 °C for each month that growers say a kind keeps dry, cool and airy: their stores begin warmer (memory, adjustable). */
const monthsNearFrost = 1.25;

/** Bulbs with thick necks and with bruises rot so many times more often than sound ones (memory, adjustable). */
const thickNeckRot = 4;
const bruiseRot = 3;

/** A kind that keeps twice as long rots half as fast: so many months for one that rots as is usual (memory, adjustable). */
const usualKeepsMonths = 6;

/** How much faster a lot rots than an ordinary sound one. */
function rotOf({ keepsMonths, thickNeckShare, bruisedShare }: StoredLot): number {
  const middle = (keepsMonths[0] + keepsMonths[1]) / 2;
  const ofKind = clamp(usualKeepsMonths / middle, 0.5, 4);
  return ofKind * (1 + (thickNeckRot - 1) * thickNeckShare + (bruiseRot - 1) * bruisedShare);
}

/**
 * What becomes of a lot, day by day: bulbs end their rest as the store's warmth tells them (half of them by a quarter
 * more than the longest usual keeping in a store near 0 °C), rot by its warmth and damp, freeze, and dry out. `liftedOn` the climate day of
 * lifting.
 */
export function keepingCurve(
  lot: StoredLot,
  store: StoreClimate,
  liftedOn: number,
  draw: StoreDraw,
): KeepingCurve {
  const sound = new Float64Array(keptDays);
  const sprouted = new Float64Array(keptDays);
  const rotten = new Float64Array(keptDays);
  const massShare = new Float64Array(keptDays);
  const { deepRest, rest: stirring, rot: rotRate, frost, neck, drying } = ratesOf(store);
  const restDays = monthsNearFrost * monthDays * Math.max(0.1, lot.keepsMonths[1]);
  const restPerDay = draw.sprouting / restDays;
  const rotFactor = draw.rotting * rotOf(lot);
  let at = ((liftedOn % climateYearDays) + climateYearDays) % climateYearDays;
  let rest = 0;
  let mass = 1;
  let neckDried = 0;
  let resting = restingAt(0);
  let soundShare = 1;
  let sproutedShare = 0;
  for (let day = 0; day < keptDays; day++) {
    sound[day] = soundShare;
    sprouted[day] = sproutedShare;
    rotten[day] = Math.max(0, 1 - soundShare - sproutedShare);
    massShare[day] = mass * (1 - neckWeightShare * neckDried);
    rest += restPerDay * (rest < deepShare ? deepRest : stirring)[at];
    const stillResting = restingAt(rest);
    const kept = resting > 1e-12 ? stillResting / resting : 0;
    resting = stillResting;
    const escaped = soundShare * kept;
    sproutedShare += soundShare - escaped;
    soundShare = escaped * Math.max(0, 1 - rotFactor * rotRate[at] - frost[at]);
    mass *= Math.max(0, 1 - draw.drying * drying[at]);
    neckDried = Math.min(1, neckDried + neck[at]);
    if (++at === climateYearDays) at = 0;
  }
  return { sound, sprouted, rotten, massShare };
}

/** Of the bulbs lifted, when fewer than this share are sound a lot is over: it is sorted oftener than it is eaten from. */
const overBelow = 0.5;

/** Days from lifting until fewer than half of the bulbs lifted are sound, eaten or not; `keptDays` where more are to the end. */
export function lastsDay({ sound }: Pick<KeepingCurve, 'sound'>): number {
  let low = 0;
  let high = keptDays;
  // it never rises
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sound[middle] < overBelow) high = middle;
    else low = middle + 1;
  }
  return low;
}

const tableStep = 1 / 256;
/** Share of the bulbs at rest when so much of the middle bulb's rest is over: 0, 1/256 … 2. */
const restingTable = Float64Array.from(
  { length: 2 / tableStep + 1 },
  (_, at) => 1 - normalCdf((at * tableStep - 1) / restSpread),
);

function restingAt(rest: number): number {
  const place = rest / tableStep;
  const below = place | 0;
  if (below >= restingTable.length - 1) return 0;
  return restingTable[below] + (place - below) * (restingTable[below + 1] - restingTable[below]);
}
