import { type ClimateDay, climateDayOf, climateYearDays } from '../calendar/index.ts';
import { classOfType } from '../plant/index.ts';
import type { Plan, Site } from '../season/index.ts';

/** Printed windows are rounded to weeks or half months, days. */
const slackDays = 7;

/** Whether growers of the district start this class in this way about this day, as published. */
export function isPractised(site: Site, { type, start, startDay }: Plan): boolean {
  return site.practice.some(
    (custom) =>
      custom.class === classOfType[type] &&
      custom.start === start &&
      since(custom.span.from - slackDays, climateDayOf(startDay)) <=
        since(custom.span.from, custom.span.to) + 2 * slackDays,
  );
}

/** Days from one climate day on to another. */
function since(from: ClimateDay, to: ClimateDay): number {
  return (((to - from) % climateYearDays) + climateYearDays) % climateYearDays;
}
