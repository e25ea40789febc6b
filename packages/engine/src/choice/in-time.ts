import { climateDayOf, type DayNumber } from '../calendar/index.ts';
import { referenceBulbG, type Site } from '../season/index.ts';
import { type Harvest, harvester } from './harvest.ts';
import { once } from './once.ts';
import type { StartScan } from './start-scan.ts';
import { hindranceOn } from './workable.ts';
import { total, worthParts } from './worth.ts';

/** Starts of which fewer seasons end well are not advised. */
const leastGoodShare = 0.5;
/** A start worth this much less than the year's best, in good seasons of one, comes too early or too late (our choice). */
const worthLess = 0.25;

/** Good weeks in a row of which none is the best one and that are fewer than these are chance: few seasons were tried. */
const leastWeeks = 3;

/** When a start of one onion is in time; see {@link inTimeRule}. */
export type InTimeRule = {
  /** Whether one start is in time by itself. */
  isInTime: (startDay: DayNumber, harvest: Harvest) => boolean;
  /** Whether starts in time make a window; the years of the days don't matter. */
  isWindow: (startDays: readonly DayNumber[]) => boolean;
};

/**
 * A start is in time where nothing keeps people from it, at least half of the seasons end well, and it is not worth much less
 * than the same onion started the same way in about the best week of the year.
 */
export function inTimeRule(site: Site, { plan, runner, isUsual, coarse }: StartScan): InTimeRule {
  const worthOf = (startDay: DayNumber, harvest: Harvest) =>
    total(worthParts(site, { ...plan, startDay }, harvest, null));
  const bestDay = coarse.startDay;
  const best = once(() => {
    runner.moveTo(bestDay, null);
    return worthOf(bestDay, harvester(site, plan, runner, referenceBulbG(site, plan))());
  });
  return {
    isInTime: (startDay, harvest) =>
      harvest.goodShare >= leastGoodShare &&
      isUsual(startDay) &&
      hindranceOn(site, plan.start, startDay) === null &&
      worthOf(startDay, harvest) >= best() - worthLess,
    isWindow: (startDays) =>
      startDays.length >= leastWeeks || startDays.some((day) => climateDayOf(day) === climateDayOf(bestDay)),
  };
}
