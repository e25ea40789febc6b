import { climateYearDays, type DayNumber, daysSinceLongest } from '../calendar/index.ts';
import { hindranceOn, isAutumnStart, typeForClass, weeksAhead } from '../choice/index.ts';
import type { DayLengthClass } from '../plant/index.ts';
import { planDefaults, runPlan, type SeasonSummary, type Site, startedOn } from '../season/index.ts';
import type { LateSowing } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';

/** From this share of the years on a sowing is too late to make bulbs. */
const mostly = 0.5;
/** An earlier sowing has to go wrong in so much fewer of the years, or it was not the date that did it (our choice). */
const clearly = 0.3;

/**
 * The first sowing of a class in the bed, from the shortest day to the longest, that mostly makes no bulb where an earlier
 * one often does; null where there is none. Weeks in which nobody sows are left out, as are those past summer, whose plants
 * are to stand the winter.
 */
export function lateSowing(
  site: Site,
  dayLengthClass: DayLengthClass,
  { today, options }: Pick<CommonAsked, 'today' | 'options'>,
): LateSowing | null {
  let least = 1;
  for (const day of sowingDays(site, today)) {
    const type = typeForClass(site, dayLengthClass, 'direct-seed', day);
    const plan = startedOn({ ...planDefaults, ...options, type, traits: null, start: 'direct-seed' }, day);
    const summary = runPlan(site, plan);
    const share = bulblessShare(summary);
    if (share >= mostly && share - least >= clearly)
      return { summary, bulblessShare: share, isWinter: isEndedByWinter(summary) };
    least = Math.min(least, share);
  }
  return null;
}

/** Weeks from the shortest day on in which a bed can be sown. */
function sowingDays(site: Site, today: DayNumber): DayNumber[] {
  const { latitudeDeg } = site.climate;
  const sinceShortest = (day: DayNumber) =>
    (daysSinceLongest(day, latitudeDeg) + Math.ceil(climateYearDays / 2)) % climateYearDays;
  return weeksAhead(today)
    .filter((day) => !isAutumnStart(day, latitudeDeg) && hindranceOn(site, 'direct-seed', day) === null)
    .sort((a, b) => sinceShortest(a) - sinceShortest(b));
}

/** Plants that winter takes before their tops go over have made no bulb either. */
function bulblessShare({ seasonShares }: SeasonSummary): number {
  return seasonShares['no-bulb'] + seasonShares['winter-killed'];
}

function isEndedByWinter({ seasonShares }: SeasonSummary): boolean {
  return seasonShares['winter-killed'] > seasonShares['no-bulb'];
}
