import {
  type ClassAnswer,
  type DayNumber,
  type DayRow,
  medianSeasonDays,
  neededSunUpH,
  type Site,
} from '@neckfall/engine';
import { type PlaceYear, placeYear } from './place-year.ts';
import { cropYear, plainYearStart } from './told-year.ts';

/** A place's year, and in it the crop that is advised there in a middling season; no days where none is. */
export type AdvisedYear = { year: PlaceYear; needSunUpH: number; days: DayRow[] };

const yearDays = 365;

/** The year around the crop of the class that leads; around summer where no crop is advised. */
export function advisedYear(
  site: Site,
  today: DayNumber,
  { summary, verdict, gamble }: ClassAnswer,
): AdvisedYear {
  const { climate } = site;
  const { plan } = summary;
  const isAdvised = verdict === 'good' || verdict === 'small' || gamble;
  const days = isAdvised ? medianSeasonDays(site, plan) : [];
  const shown = isAdvised
    ? cropYear(plan.startDay, days.at(-1)?.day ?? plan.startDay)
    : { firstDay: plainYearStart(today, climate.latitudeDeg), days: yearDays };
  return {
    year: placeYear(climate, shown.firstDay, shown.days),
    needSunUpH: neededSunUpH(site, summary.needPhotoperiodH),
    days,
  };
}
