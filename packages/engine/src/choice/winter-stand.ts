import { type CommonYearDay, civilDate, type DayNumber, dayNumber } from '../calendar/index.ts';
import { planDefaults, runPlan, type SeasonSummary, type Site } from '../season/index.ts';
import type { GrowingOptions } from './growing-options.ts';

/** Whether young plants sown in autumn come through the winter. Shares of plants lost, middle and hard winter. */
export type WinterStand = { lost: number; lostInHardWinter: number; lostUnderFleece: number };

/** Sowings a fortnight apart from late summer on, days of the year north of the equator. */
const sowings: readonly CommonYearDay[] = [217, 231, 245, 259, 273];
const halfYear = 182;

/**
 * Tries intermediate onions sown in place for overwintering and takes the sowing that loses fewest plants to frost.
 */
export function winterStand(site: Site, today: DayNumber, options: GrowingOptions): WinterStand {
  const open = best(site, today, { ...options, cover: 'none' });
  const fleece = best(site, today, { ...options, cover: 'fleece' });
  return {
    lost: open.winterKilledPlantsShare?.p50 ?? 0,
    lostInHardWinter: open.winterKilledPlantsShare?.p90 ?? 0,
    lostUnderFleece: fleece.winterKilledPlantsShare?.p50 ?? 0,
  };
}

function best(site: Site, today: DayNumber, options: GrowingOptions): SeasonSummary {
  const newYear = dayNumber(civilDate(today).year, 1, 1);
  const shift = site.climate.latitudeDeg < 0 ? halfYear : 0;
  const tried = sowings.map((dayOfYear) =>
    runPlan(site, {
      ...planDefaults,
      ...options,
      type: 'intermediate',
      start: 'direct-seed',
      startDay: newYear + ((dayOfYear + shift) % 365) - 1,
    }),
  );
  const lost = ({ winterKilledPlantsShare }: SeasonSummary) => winterKilledPlantsShare?.p50 ?? 1;
  return tried.reduce((a, b) => (lost(b) < lost(a) ? b : a));
}
