import { climateDayOf, climateYearDays, type DayNumber } from '../calendar/index.ts';
import { type StartMethod, startWays } from '../plant/index.ts';
import { type Hindrance, plantingOut, type Site } from '../season/index.ts';
import { isOnSale } from './on-sale.ts';

/**
 * Beds colder than this are wet or frozen, and nobody sows or plants in them, °C, mean of the day in the mean climate.
 * Of 100 published windows for sowing or planting outdoors five begin in a colder bed, and all have their middle in one of
 * 5.7 °C or more (test/choice/cold-beds.test.ts).
 */
export const workableBedC = 6;

/**
 * Roots need so long before beds turn colder than that, days. Of onions set out early in December at Muan, Korea, frost heaved
 * 69 in 100 out of the ground, of those of early to mid November fewer than one (Kwon et al. 2015); windows for planting
 * before winter, some of them from memory, end 13 days before or sooner (test/choice/cold-beds.test.ts).
 */
export const rootingDays = 14;

/** Whether a bed can usually be sown or planted on a day, and stays warm enough to root in; trays don't wait for it. */
export function isWorkable(site: Site, start: StartMethod, day: DayNumber): boolean {
  if (startWays[start].standsInTrays) return true;
  const { soilMeanC } = site.mean('none');
  return (
    soilMeanC[climateDayOf(day)] >= workableBedC && soilMeanC[climateDayOf(day + rootingDays)] >= workableBedC
  );
}

/** Seedlings are planted out no sooner and stand no longer in their trays, weeks (common practice, no source). */
const shortestTrayWeeks = 6;
/** Seedlings are long outgrown after so many weeks in trays. */
export const longestTrayWeeks = 17;

/** Whether beds stay too cold for seedlings sown on a day until they have long outgrown their trays. */
function standsTooLong(site: Site, day: DayNumber): boolean {
  const { tempMeanC } = site.mean('none');
  for (let after = 7 * shortestTrayWeeks; after <= 7 * longestTrayWeeks; after++) {
    if (tempMeanC[climateDayOf(day + after)] >= plantingOut.bedC) return false;
  }
  return true;
}

/** What keeps people from starting on a day; null where nothing does. */
export function hindranceOn(site: Site, start: StartMethod, day: DayNumber): Hindrance | null {
  if (!isWorkable(site, start, day)) return 'cold-bed';
  const { standsInTrays, from } = startWays[start];
  if (standsInTrays && standsTooLong(site, day)) return 'long-tray';
  return from === 'seed' || isOnSale(site, start, day) ? null : `no-${from}`;
}

/**
 * A bed too cold to start in, or about to turn so: its temperature that day, °C, and the next day from which it can be worked,
 * null where there is none.
 */
export type ColdBed = { soilC: number; isTurning: boolean; workableFrom: DayNumber | null };

/** Whether a start comes while beds are usually too cold or soon will be; null where it does not. */
export function coldBed(site: Site, start: StartMethod, day: DayNumber): ColdBed | null {
  if (isWorkable(site, start, day)) return null;
  let ahead = 1;
  while (ahead < climateYearDays && !isWorkable(site, start, day + ahead)) ahead++;
  const soilC = site.mean('none').soilMeanC[climateDayOf(day)];
  return {
    soilC,
    isTurning: soilC >= workableBedC,
    workableFrom: ahead < climateYearDays ? day + ahead : null,
  };
}
