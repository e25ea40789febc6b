import {
  climateDayOf,
  type KeepLot,
  type KeepYear,
  keepingCurve,
  keptDays,
  liftedOf,
  marketableKgM2,
  plantOutDayOf,
  runnerOf,
  type Site,
  storeClimateOf,
  storeDrawsOf,
  unripeKeepsMonths,
  usualBruised,
} from '../../packages/engine/src/index.ts';

const yearDays = 365;

/** One harvest in the store. */
type Heap = { lot: number; on: number; kg: number; left: Float64Array; endsOn: number };

/** What a household lived through: shares of its years. */
export type Lived = {
  years: number;
  suppliedShare: number;
  fedDaysShare: number;
  eatenKg: number;
  lostKg: number;
};

/**
 * Lives year after year by a plan, each year of other weather, and eats day by day from whatever ends soonest: nothing
 * of the plan's own year, its periods or its order of lots has a part.
 */
export function live(site: Site, { household, lots, gaps }: KeepYear): Lived {
  const bulbs = lots.filter(({ likes }) => !likes.includes('green'));
  const heaps = bulbs.flatMap((lot, at) => heapsOf(site, lot, at, household.store));
  heaps.sort((a, b) => a.on - b.on);
  const begin = Math.min(...bulbs.map(({ ready }) => ready.days?.p50 ?? Number.POSITIVE_INFINITY));
  const isGap = new Uint8Array(yearDays);
  for (const { from, to } of gaps) for (let day = from; day <= to; day++) isGap[climateDayOf(day)] = 1;
  const needKg = household.gramsPerWeek / 7000;
  // the first year's store is not yet full, the last year's next harvest not there
  const years = site.years - 2;
  let supplied = 0;
  let fedDays = 0;
  let askedDays = 0;
  let eatenKg = 0;
  let harvestKg = 0;
  let next = 0;
  let store: Heap[] = [];
  for (let year = 0; year <= years; year++) {
    let isFed = true;
    for (let ahead = 0; ahead < yearDays; ahead++) {
      const day = begin + year * yearDays + ahead;
      while (next < heaps.length && heaps[next].on <= day) {
        store.push(heaps[next]);
        if (year > 0) harvestKg += heaps[next].kg;
        next++;
      }
      store = store.filter(({ kg, endsOn }) => kg > 1e-9 && endsOn > day);
      store.sort((a, b) => a.endsOn - b.endsOn);
      let hungry = needKg;
      for (const heap of store) {
        const share = heap.left[day - heap.on];
        const eats = Math.min(hungry, heap.kg * share);
        heap.kg -= eats / share;
        hungry -= eats;
      }
      if (year === 0) continue;
      eatenKg += needKg - hungry;
      if (isGap[(climateDayOf(begin) + ahead) % yearDays]) continue;
      askedDays++;
      if (hungry < needKg * 1e-6) fedDays++;
      else isFed = false;
    }
    if (year > 0 && isFed) supplied++;
  }
  return {
    years,
    suppliedShare: supplied / years,
    fedDaysShare: askedDays === 0 ? 0 : fedDays / askedDays,
    eatenKg: eatenKg / years,
    lostKg: (harvestKg - eatenKg) / years,
  };
}

/** The harvests of a lot, a year each, with what is left of them day by day. */
function heapsOf(
  site: Site,
  { plan, kind, bedM2 }: KeepLot,
  lot: number,
  store: KeepYear['household']['store'],
): Heap[] {
  const runner = runnerOf(site, plan);
  runner.moveTo(plan.startDay, plantOutDayOf(plan));
  const air = storeClimateOf(site.climate, store);
  const draws = storeDrawsOf(site.years, site.seed);
  const heaps: Heap[] = [];
  for (let year = 0; year < site.years; year++) {
    const outcome = runner.season(year);
    const lifted = liftedOf(outcome, runner.crop.lastDay);
    if (lifted === null) continue;
    const kg = bedM2 * marketableKgM2(outcome, runner.crop.type.dryMatterShare, plan.densityPerM2);
    const on = plan.startDay + Math.round(lifted.on);
    const stored = {
      keepsMonths: lifted.isRipe ? kind.keepsMonths : unripeKeepsMonths,
      thickNeckShare: lifted.thickNeckShare,
      bruisedShare: usualBruised,
    };
    const { sound, massShare } = keepingCurve(stored, air, climateDayOf(on), draws[year]);
    const left = sound.map((share, day) => share * massShare[day]);
    // it ends when a quarter of it is sound
    let days = 0;
    while (days < keptDays && sound[days] >= 0.25) days++;
    const from = on + year * yearDays;
    heaps.push({ lot, on: from, kg, left, endsOn: from + days });
  }
  return heaps;
}
