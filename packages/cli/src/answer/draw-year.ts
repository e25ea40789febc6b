import {
  adviceOfPlace,
  advisedYear,
  cropYear,
  namedOf,
  type PlaceYear,
  placeYear,
  seasonHeadline,
  whereHeadline,
} from '@neckfall/answers';
import {
  type DayRow,
  medianSeasonDays,
  neededSunUpH,
  type Plan,
  runPlan,
  type SeasonSummary,
  surveyOf,
} from '@neckfall/engine';
import { cropFactsOf, cropSaid, YearLine, yearLineOf, yearTableOf } from '@neckfall/pictures';
import type { Frame } from '../frame/frame.ts';
import { type PictureAnswer, pictureWidth } from './picture-answer.ts';

/** The year of a place with the crop that is advised there, as `where` and the page Where have it. */
export function drawPlaceYear(frame: Frame): PictureAnswer {
  const { site, options, label, speaker } = frame;
  const advice = adviceOfPlace(surveyOf(site, options.today, { sunHours: options.sunHours }));
  const named = namedOf(advice);
  const told = { summary: named.summary, ...advisedYear(site, options.today, named) };
  return drawYear(frame, told, null, whereHeadline(advice, label, options.today, speaker));
}

/** The year with a crop on it, as `season` has it. */
export function drawCropYear(frame: Frame, plan: Plan, cultivar: string | null): PictureAnswer {
  const { site, label, speaker } = frame;
  const summary = runPlan(site, plan);
  const days = medianSeasonDays(site, plan);
  const shown = cropYear(plan.startDay, days.at(-1)?.day ?? plan.startDay);
  const told = {
    summary,
    days,
    year: placeYear(site.climate, shown.firstDay, shown.days),
    needSunUpH: neededSunUpH(site, summary.needPhotoperiodH),
  };
  return drawYear(frame, told, cultivar, seasonHeadline(summary, cultivar, label, speaker));
}

type Told = { summary: SeasonSummary; year: PlaceYear; needSunUpH: number; days: DayRow[] };

function drawYear(frame: Frame, told: Told, cultivar: string | null, title: string): PictureAnswer {
  const { summary, year, needSunUpH, days } = told;
  const { speaker, options } = frame;
  const { today } = options;
  const crop = days.length > 0 ? cropFactsOf(summary, days) : null;
  const isShown = today >= year.firstDay && today < year.firstDay + year.sunUpH.length;
  const { note, ...line } = yearLineOf({
    year,
    needSunUpH,
    today: isShown ? today : null,
    crop: crop && cropSaid(crop, speaker),
    speaker,
  });
  return {
    frame,
    title,
    drawn: YearLine({ id: 'year', width: pictureWidth, note: null, ...line }),
    summary: line.summary,
    note,
    table: yearTableOf({ year, speaker }),
    numbers: { year, needSunUpH, plan: summary.plan, cultivar, crop },
  };
}
