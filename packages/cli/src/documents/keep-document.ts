import {
  keepCautions,
  keepEatFirst,
  keepHeadline,
  type NamedStore,
  type ShoppingItem,
  shoppingOf,
  shoppingSentence,
  storedEatFirst,
} from '@neckfall/answers';
import {
  classOfType,
  formatDay,
  type KeepLot,
  type KeepMonth,
  type KeepYear,
  type LiftAdvice,
  type StoreClimate,
  type StoreSaid,
} from '@neckfall/engine';
import type { Frame } from '../frame/frame.ts';
import type { CsvValue } from '../output/csv.ts';
import { documentHead } from './document-head.ts';
import type { KeepDocument } from './keep-schema.ts';
import { storeMonths } from './store-months.ts';
import { dateRangeOf, rangeOf, round } from './values.ts';

/** Whether to lift a planting, and what it is to dry; the advice is null where no bulbs come. */
export type ToldLift = { id: string; name: string; advice: LiftAdvice | null; sentences: readonly string[] };

/** A kitchen's year as it is told. */
export type KeepTold = {
  frame: Frame;
  year: KeepYear;
  store: StoreClimate;
  /** What a garden has in store, in the order in which it is eaten. */
  inStore: readonly NamedStore[];
  /** Of the planting that was named. */
  lift: ToldLift | null;
  gramsFrom: 'given' | 'usual';
  country: string | null;
};

export function keepDocument({
  frame,
  year,
  store,
  inStore,
  lift,
  gramsFrom,
  country,
}: KeepTold): KeepDocument {
  const { speaker, options } = frame;
  const { household, lots } = year;
  return {
    schema: 'neckfall/keep@1',
    ...documentHead(frame),
    today: formatDay(options.today),
    household: {
      people: household.people,
      gramsPerWeek: round(household.gramsPerWeek),
      gramsFrom,
      ...storeOf(household.store),
      likes: [...household.likes],
      seedAge: household.seedAge,
    },
    storeClimate: storeMonths(store),
    answer: keepHeadline(year, options.today, speaker),
    lots: lots.map(lotOf),
    bedM2: round(year.bedM2),
    months: year.months.map(monthOf),
    suppliedYearsShare: year.suppliedYearsShare,
    gaps: year.gaps.map(({ from, to, closedBy }) => ({
      from: formatDay(from),
      to: formatDay(to),
      closedBy: [...closedBy],
    })),
    unmetLikes: [...year.unmetLikes],
    taught: year.taught && {
      looks: year.taught.looks,
      sproutingPace: round(year.taught.sproutingPace),
      rottingPace: round(year.taught.rottingPace),
    },
    inStore: inStore.map(storedOf),
    lift: lift && liftedOf(lift),
    eatFirst: [
      ...storedEatFirst(inStore, options.today, speaker),
      ...keepEatFirst(year, options.today, speaker),
    ],
    shopping: shoppingOf(year).map((item) => ({
      ...shoppingItem(item),
      sentence: shoppingSentence(item, country, speaker),
    })),
    cautions: keepCautions(speaker),
  };
}

function storeOf(said: StoreSaid): Pick<KeepDocument['household'], 'store' | 'storeReadings'> {
  if (typeof said === 'string') return { store: said, storeReadings: 0 };
  if ('place' in said) return { store: said.place, storeReadings: said.readings.length };
  return { store: null, storeReadings: 0 };
}

function lotOf({ kind, plan, summary, likes, bedM2, need, ready, lastsUntil }: KeepLot) {
  return {
    class: classOfType[kind.type],
    type: kind.type,
    cultivars: [...kind.names],
    start: kind.start,
    date: formatDay(plan.startDay),
    plantOut: summary.plantOut && dateRangeOf(summary.plantOut),
    likes: [...likes],
    keepsMonths: [...kind.keepsMonths],
    bedM2: round(bedM2),
    rowM: round(need.rowM),
    plants: need.plants,
    seeds: need.seeds,
    sets: need.sets,
    bundles: need.bundles,
    trayCells: need.trayCells,
    compostL: need.compostL === null ? null : round(need.compostL),
    ready: dateRangeOf(ready),
    lastsUntil: dateRangeOf(lastsUntil),
  };
}

function storedOf({ name, stored }: NamedStore) {
  return {
    planting: stored.plantingId,
    name,
    liftedOn: formatDay(stored.liftedOn),
    soundKg: rangeOf(stored.soundKg),
    soundBulbs: rangeOf(stored.soundBulbs),
    soundShare: rangeOf(stored.soundShare),
    lastsUntil: dateRangeOf(stored.lastsUntil),
    lostNextShare: round(stored.lostNextShare),
    thickNeckShare: round(stored.thickNeckShare),
    nextLook: stored.nextLook === null ? null : formatDay(stored.nextLook),
    checks: stored.checks,
  };
}

function liftedOf({ id, name, advice, sentences }: ToldLift) {
  return {
    planting: id,
    name,
    verdict: advice?.verdict ?? null,
    best: advice?.best == null ? null : formatDay(advice.best),
    topsOverShare: advice && round(advice.topsOverShare),
    lossTodayShare: advice && round(advice.lossTodayShare),
    lossBestShare: advice && round(advice.lossBestShare),
    drying: (advice?.drying ?? []).map(({ place, p10, p50, p90, lossShare }) => ({
      place,
      days: { p10, p50, p90 },
      lossShare: round(lossShare),
    })),
    sentences: [...sentences],
  };
}

function monthOf({ year, month, needKg, storeKg, lotsKg, lostKg, from, suppliedShare }: KeepMonth) {
  return {
    month: `${year}-${String(month).padStart(2, '0')}`,
    needKg: round(needKg),
    storeKg: { p10: round(storeKg.p10), p50: round(storeKg.p50), p90: round(storeKg.p90) },
    lotsKg: lotsKg.map((kg) => round(kg)),
    lostKg: round(lostKg),
    from: [...from],
    suppliedShare,
  };
}

function shoppingItem(item: ShoppingItem) {
  return {
    what: item.what,
    lot: item.lot === null ? null : item.at,
    count: item.count,
    massG: 'grams' in item ? item.grams.map((grams) => round(grams)) : null,
    compostL: 'compostL' in item ? round(item.compostL) : null,
  };
}

/** One row a month; lots by their place in the list, from one on. */
export function keepRows({ months }: KeepDocument): Record<string, CsvValue>[] {
  return months.map(({ month, needKg, storeKg, lostKg, from, suppliedShare }) => ({
    month,
    needKg,
    storeKgP10: storeKg.p10,
    storeKgP50: storeKg.p50,
    storeKgP90: storeKg.p90,
    lostKg,
    fromLots: from.map((lot) => lot + 1).join('; '),
    suppliedShare,
  }));
}
