import {
  civilDate,
  climateDayOf,
  climateYearDays,
  type DayNumber,
  dayNumber,
  monthLengths,
} from '../calendar/index.ts';
import type { Like } from '../garden/index.ts';
import { dateSpread, percentiles, type Site } from '../season/index.ts';
import { alsoFed } from './also-fed.ts';
import { closersOf } from './gap-closers.ts';
import type { Household } from './household.ts';
import type { KeepGap, KeepLot, KeepMonth, KeepYear } from './keep-year.ts';
import { type KitchenDays, kitchenDays, monthAt } from './kitchen-days.ts';
import { gapsOf } from './kitchen-gaps.ts';
import { periodDays } from './kitchen-periods.ts';
import type { CandidateLot } from './lot-supply.ts';
import type { GrownStart } from './lot-survey.ts';
import { kitchenYears } from './lot-years.ts';
import { mostlyBare } from './mostly-bare.ts';
import { startNeedOf } from './start-need.ts';

/** A lot chosen for the kitchen. */
export type ChosenLot = { lot: CandidateLot; areaM2: number };

/** Tells a kitchen's year from the areas chosen, day by day; lots come in the order in which they are lifted. */
export function tellYear(
  site: Site,
  household: Household,
  chosen: readonly ChosenLot[],
  green: KeepLot | null,
  asked: { required: Uint8Array; enoughYears: number },
  grown: readonly GrownStart[],
  unmetLikes: readonly Like[],
): Omit<KeepYear, 'taught'> {
  const years = kitchenYears;
  const days = kitchenDays(
    chosen.map(({ lot }) => lot),
    chosen.map(({ areaM2 }) => areaM2),
    years,
    household.gramsPerWeek / 7000,
  );
  const fed = alsoFed(days.unfed, asked.required, years, asked.enoughYears);
  const told = chosen
    .map((one, at) => ({ at, keep: keepLot(one, at, days, years, household.seedAge) }))
    .sort((a, b) => readyOf(a.keep) - readyOf(b.keep));
  const lots = [...told.map(({ keep }) => keep), ...(green ? [green] : [])];
  const first = told.length > 0 ? readyOf(told[0].keep) : (grown[0]?.start.plan.startDay ?? 0);
  const order = told.map(({ at }) => at);
  return {
    household,
    lots,
    bedM2: Math.round(1000 * lots.reduce((sum, { bedM2 }) => sum + bedM2, 0)) / 1000,
    months: monthsFrom(first, days, order, green !== null, household, years),
    suppliedYearsShare: suppliedShare(days.unfed, fed, years),
    gaps: gapsFrom(
      site,
      first,
      { unfed: days.unfed, required: fed, years },
      // where some winter already, more of the kind is no help
      chosen.some(({ lot }) => lot.start.winters) ? [] : grown,
    ),
    unmetLikes,
    years,
    seed: site.seed,
  };
}

function readyOf({ ready }: KeepLot): DayNumber {
  return ready.days?.p50 ?? 0;
}

function keepLot(
  { lot, areaM2 }: ChosenLot,
  at: number,
  days: KitchenDays,
  years: number,
  seedAge: Household['seedAge'],
): KeepLot {
  const { summary } = lot.start;
  const { startDay } = summary.plan;
  const lifted: number[] = [];
  const gone: number[] = [];
  lot.years.liftedAfter.forEach((after, year) => {
    if (after < 0) return;
    lifted.push(after);
    gone.push(after + days.lastDays[at * years + year]);
  });
  return {
    kind: lot.kind,
    plan: summary.plan,
    summary,
    likes: lot.kind.likes,
    bedM2: areaM2,
    need: startNeedOf(summary, areaM2, seedAge),
    ready: dateSpread(lifted, startDay, years),
    lastsUntil: dateSpread(gone, startDay, years),
  };
}

function monthsFrom(
  first: DayNumber,
  days: KitchenDays,
  order: readonly number[],
  hasGreen: boolean,
  household: Household,
  years: number,
): KeepMonth[] {
  const begin = civilDate(first);
  const across = Array.from({ length: years }, (_, year) => year);
  return Array.from({ length: 12 }, (_, ahead) => {
    const month = (begin.month - 1 + ahead) % 12;
    const year = begin.year + Math.floor((begin.month - 1 + ahead) / 12);
    const of = (values: Float64Array, lot: number) =>
      across.map((at) => values[monthAt(lot, at, years, month)]);
    const all = (values: Float64Array) =>
      across.map((at) => order.reduce((sum, lot) => sum + values[monthAt(lot, at, years, month)], 0));
    const middles = order.map((lot) => percentiles(of(days.store, lot)).p50);
    const isEaten = (lot: number) => of(days.eaten, lot).filter((kg) => kg > 0).length > years / 2;
    return {
      year,
      month: month + 1,
      needKg: (household.gramsPerWeek * monthLengths[month]) / 7000,
      storeKg: percentiles(all(days.store)),
      // what is pulled green is never stored
      lotsKg: hasGreen ? [...middles, 0] : middles,
      lostKg: percentiles(all(days.lost)).p50,
      from: order.flatMap((lot, at) => (isEaten(lot) ? [at] : [])),
      suppliedShare: across.filter((at) => isFedIn(days.unfed, at, month)).length / years,
    };
  });
}

function isFedIn(unfed: Float64Array, year: number, month: number): boolean {
  const from = climateDayOf(dayNumber(2027, month + 1, 1));
  for (let day = from; day < from + monthLengths[month]; day++)
    if (unfed[year * climateYearDays + day] > 0) return false;
  return true;
}

function suppliedShare(unfed: Float64Array, required: Uint8Array, years: number): number {
  let supplied = 0;
  for (let year = 0; year < years; year++) {
    let isFed = true;
    for (let day = 0; day < climateYearDays; day++) {
      // a period begins within a day: the day belongs to the gap if any of it does
      const isAsked =
        required[Math.floor(day / periodDays)] &&
        required[Math.min(required.length - 1, Math.floor((day + 1 - 1e-9) / periodDays))];
      if (isAsked && unfed[year * climateYearDays + day] > 0) isFed = false;
    }
    if (isFed) supplied++;
  }
  return supplied / years;
}

/** Gaps as dates of the year that is told. */
function gapsFrom(
  site: Site,
  first: DayNumber,
  { unfed, required, years }: { unfed: Float64Array; required: Uint8Array; years: number },
  grown: readonly GrownStart[],
): KeepGap[] {
  const begin = climateDayOf(first);
  return gapsOf(required)
    .map(({ first: from, last }) => {
      const fromDay = Math.floor(from * periodDays);
      const lasts = Math.ceil((last + 1) * periodDays) - 1 - fromDay;
      const start = first + ((fromDay - begin + climateYearDays) % climateYearDays);
      const to = start + Math.min(lasts, climateYearDays - 1);
      const bare = mostlyBare(unfed, years, fromDay, to - start + 1);
      return {
        from: start,
        to,
        mostly: bare && { from: start + bare.from, to: start + bare.to },
        closedBy: closersOf(site, start, to, grown),
      };
    })
    .sort((a, b) => a.from - b.from);
}
