import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  climateAt,
  climateYearDays,
  firstDayOfMonth,
  type KeepingCurve,
  keepingCurve,
  lastsDay,
  noStoreDraw,
  percentiles,
  type Spread,
  type StoreClimate,
  type StoreDraw,
  storeClimateOf,
  storeDrawsOf,
} from '../../packages/engine/src/index.ts';
import { type CaseAir, type StoreCase, storeCases } from './store-cases.ts';

export type ScoredCase = {
  of: StoreCase;
  /** Of the usual store and lot. */
  usual: number;
  band: Spread;
  isIn: boolean;
};

const draws = 300;

/** What is printed is rounded: a share may lie so far outside its band. */
const rounding = 0.005;
const assets = new URL('../../packages/data/assets/climate.bin', import.meta.url);

/** Published losses in store beside those of the model. */
export function scoreStore(): ScoredCase[] {
  const nodes = readClimateNodes(assets.pathname);
  const climateOf = ({ at: [latitudeDeg, longitudeDeg, elevationM] }: Exclude<CaseAir, readonly unknown[]>) =>
    climateAt(nodes, latitudeDeg, longitudeDeg, elevationM);
  return storeCases.map((of) => {
    const { air, keepsMonths } = of;
    const [store, liftedOn] =
      'store' in air
        ? [storeClimateOf(climateOf(air), air.store), firstDayOfMonth[air.month - 1] + 14]
        : [heldOf(air), 0];
    const lot = { keepsMonths, thickNeckShare: 0, bruisedShare: 0 };
    const told = (draw: StoreDraw) => measured(keepingCurve(lot, store, liftedOn, draw), of);
    const band = percentiles(storeDrawsOf(draws, 1).map(told));
    const [low, high] = of.published;
    return {
      of,
      usual: told(noStoreDraw),
      band,
      isIn: band.p10 <= high + rounding && low - rounding <= band.p90,
    };
  });
}

/** Air that is changed from step to step, from the first day of a climate year. */
function heldOf(steps: readonly { days: number; tempC: number; humidityPct: number }[]): StoreClimate {
  const last = steps[steps.length - 1];
  const tempC = new Float64Array(climateYearDays).fill(last.tempC);
  const humidityPct = new Float64Array(climateYearDays).fill(last.humidityPct);
  let from = 0;
  for (const step of steps.slice(0, -1)) {
    tempC.fill(step.tempC, from, from + step.days);
    humidityPct.fill(step.humidityPct, from, from + step.days);
    from += step.days;
  }
  return { tempC, humidityPct };
}

/** Bulbs are cured before they are weighed into a trial, days. */
const curedDays = 21;

function measured(curve: KeepingCurve, { days, measure }: StoreCase): number {
  const { sound, sprouted, rotten, massShare } = curve;
  const lostBy = (day: number) => 1 - massShare[day + curedDays] / massShare[curedDays];
  switch (measure) {
    case 'rotten':
      return rotten[days];
    case 'sprouted':
      return sprouted[days];
    case 'sound':
      return sound[days];
    case 'wasted':
      return 1 - sound[days];
    case 'weight lost':
      return lostBy(days);
    case 'weight lost with rot':
      return 1 - (1 - lostBy(days)) * (1 - rotten[days]);
    case 'weight lost, mean':
      return Array.from({ length: days + 1 }, (_, day) => lostBy(day)).reduce((a, b) => a + b) / (days + 1);
    case 'weight kept':
      return (1 - lostBy(days)) * (1 - rotten[days]);
    case 'lasts':
      return lastsDay(curve);
  }
}
