import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  climateAt,
  type KeepingCurve,
  keepingCurve,
  lastsDay,
  learnStore,
  percentiles,
  type RandomSource,
  randomSource,
  type StoreCheck,
  type StoreClimate,
  type StoreDraw,
  type StoredLot,
  type StorePlace,
  storeClimateOf,
  storeDrawsOf,
} from '../../packages/engine/src/index.ts';

/** How far forecasts of one store twin were out, days. */
export type StoreTwin = {
  store: StorePlace;
  place: string;
  untaughtDays: number;
  taughtDays: number;
  isHeld: boolean;
};

const kinds: readonly (readonly [number, number])[] = [
  [2, 3],
  [3, 5],
  [5, 7],
  [8, 10],
];
const stores = ['cellar', 'garage', 'kitchen', 'shed'] as const;
const places = [
  ['Leeds', 53.8, -1.55, 60, 240],
  ['Lisbon', 38.72, -9.14, 50, 190],
  ['Boise', 43.62, -116.2, 825, 235],
] as const;

const bulbs = 150;

/** When three looks are taken, in the time by which half would be lost in a usual store. */
const usualLooks = [0.25, 0.5, 0.75] as const;
export const earlyLooks = [0.15, 0.3, 0.45] as const;
type Looks = readonly [number, number, number];

const seasons = 60;

/**
 * Growers whose store differs from the usual by a hidden draw look three times, by default after a quarter, half and three quarters of
 * the time by which half would be lost in a usual one. What is forecast after the third is the day on which half are.
 */
export function storeStudy(each: number, looks: Looks = usualLooks): StoreTwin[] {
  const nodes = readClimateNodes(new URL('../../packages/data/assets/climate.bin', import.meta.url).pathname);
  const random = randomSource(4711);
  return places.flatMap(([place, latitudeDeg, longitudeDeg, elevationM, liftedOn]) => {
    const climate = climateAt(nodes, latitudeDeg, longitudeDeg, elevationM);
    return stores.flatMap((store) => {
      const air = storeClimateOf(climate, store);
      return kinds.flatMap((keepsMonths) => {
        const lot: StoredLot = { keepsMonths, thickNeckShare: 0.05, bruisedShare: 0.02 };
        // none of the draws that learning tries
        const hidden = storeDrawsOf(300, 90_001 + Math.floor(random.uniform() * 1e6)).slice(0, each);
        return (
          hidden
            .map((draw) => ({ store, place, ...forecasts(lot, air, liftedOn, draw, random, looks) }))
            // the others are over when last looked at: nothing is left to forecast
            .filter(({ isAhead }) => isAhead)
        );
      });
    });
  });
}

function forecasts(
  lot: StoredLot,
  air: StoreClimate,
  liftedOn: number,
  hidden: StoreDraw,
  random: RandomSource,
  looks: Looks,
) {
  const curve = keepingCurve(lot, air, liftedOn, hidden);
  const truth = lastsDay(curve);
  const told = (draws: readonly StoreDraw[]) =>
    percentiles(draws.map((draw) => lastsDay(keepingCurve(lot, air, liftedOn, draw))));
  const untaught = told(storeDrawsOf(seasons, 7));
  const taught = told(
    learnStore(lot, air, liftedOn, looksAt(curve, untaught.p50, random, looks), seasons, 7),
  );
  return {
    untaughtDays: Math.abs(untaught.p50 - truth),
    taughtDays: Math.abs(taught.p50 - truth),
    isAhead: truth > Math.round(looks[2] * untaught.p50),
    isHeld: taught.p10 <= truth && truth <= taught.p90,
  };
}

/** Three counts of a store, bad bulbs taken out at each. */
function looksAt(
  { sound, sprouted }: KeepingCurve,
  usualDays: number,
  random: RandomSource,
  looks: Looks,
): StoreCheck[] {
  let left = bulbs;
  let from = 0;
  return looks.map((share) => {
    const day = Math.max(from + 1, Math.round(share * usualDays));
    const kept = sound[day] / Math.max(1e-12, sound[from]);
    const sprouts = (sprouted[day] - sprouted[from]) / Math.max(1e-12, sound[from]);
    const found = { day, sound: 0, isSoundCounted: true, sprouted: 0, rotten: 0, massShare: null };
    for (let bulb = 0; bulb < left; bulb++) {
      const chance = random.uniform();
      found[chance < kept ? 'sound' : chance < kept + sprouts ? 'sprouted' : 'rotten']++;
    }
    left = found.sound;
    from = day;
    return found;
  });
}

export function storeTwinFigures(twins: readonly StoreTwin[]) {
  const mean = (of: (twin: StoreTwin) => number) =>
    twins.reduce((sum, twin) => sum + of(twin), 0) / twins.length;
  const untaughtDays = mean((twin) => twin.untaughtDays);
  const taughtDays = mean((twin) => twin.taughtDays);
  return {
    untaughtDays,
    taughtDays,
    lessShare: 1 - taughtDays / untaughtDays,
    heldShare: mean((twin) => Number(twin.isHeld)),
  };
}
