import type { DayNumber } from '../calendar/index.ts';
import type { GrowingOptions, Way } from '../choice/index.ts';
import type { Site } from '../season/index.ts';
import { type LotStart, lotStartsOf } from './lot-starts.ts';
import { kitchenYears, type LotYears, lotYearsOf } from './lot-years.ts';

/** A start with what its years gave. */
export type GrownStart = { start: LotStart; years: LotYears };

const grownAt = new WeakMap<Site, Map<string, readonly GrownStart[]>>();

/** The starts of a way and their years, grown once for each site: what a household wants of them moves none. */
export function grownStarts(
  site: Site,
  way: Way,
  today: DayNumber,
  options: GrowingOptions,
): readonly GrownStart[] {
  let known = grownAt.get(site);
  if (!known) {
    known = new Map();
    grownAt.set(site, known);
  }
  const asked = Object.entries(options).sort(([a], [b]) => (a < b ? -1 : 1));
  const key = JSON.stringify([way.type, way.start, way.isUsual(today), today, site.atHand, asked]);
  let grown = known.get(key);
  if (!grown) {
    const through = site.reopened({ years: kitchenYears });
    grown = lotStartsOf(site, way, today, options).map((start) => ({
      start,
      years: lotYearsOf(through, start.plan),
    }));
    known.set(key, grown);
  }
  return grown;
}
