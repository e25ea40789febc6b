import type { PlaceYear } from '@neckfall/answers';
import { classOfType, formatDay, type Plan } from '@neckfall/engine';
import type { CropFacts } from '@neckfall/pictures';
import type { Frame } from '../frame/frame.ts';
import { documentHead } from './document-head.ts';
import { planDocument } from './plan-document.ts';
import { round } from './values.ts';
import type { YearLineDocument } from './year-line-schema.ts';

export type YearLineNumbers = {
  year: PlaceYear;
  needSunUpH: number;
  /** The plan that the need is that of. */
  plan: Plan;
  cultivar: string | null;
  /** Null where no crop is advised. */
  crop: CropFacts | null;
};

/** Days about the longest differ by seconds, and it is told by its date: h to so many digits. */
const hourDigits = 5;

/** What a year line is drawn from. */
export function yearLineDocument(frame: Frame, numbers: YearLineNumbers): YearLineDocument {
  const { year, needSunUpH, plan, cultivar, crop } = numbers;
  return {
    schema: 'neckfall/year-line@1',
    ...documentHead(frame),
    made: formatDay(frame.options.today),
    weather: frame.options.weather ? 'some' : 'drawn',
    class: classOfType[plan.type],
    needSunUpH: round(needSunUpH, hourDigits),
    firstDay: formatDay(year.firstDay),
    sunUpH: year.sunUpH.map((hours) => round(hours, hourDigits)),
    rainMm: year.rainMm.map((rain) => round(rain)),
    frostShare: year.frostShare.map((share) => round(share, 4)),
    highC: year.highC.map((temp) => round(temp, 2)),
    months: year.months.map(({ sunUpH, rainMm, frostNights, highC }, month) => ({
      month: month + 1,
      sunUpH: round(sunUpH),
      rainMm: round(rainMm),
      frostNights: round(frostNights),
      highC: round(highC, 2),
    })),
    plan: crop && planDocument(plan, cultivar),
    crop: crop && cropDocument(crop),
  };
}

function cropDocument(crop: CropFacts): YearLineDocument['crop'] {
  return {
    start: crop.start,
    leaves: crop.leaves.map(({ day, made }) => ({ date: formatDay(day), made })),
    leavesMade: crop.leavesMade && {
      date: formatDay(crop.leavesMade.day),
      count: crop.leavesMade.count,
    },
    bulb: crop.bulb.map(({ day, acrossMm }) => ({ date: formatDay(day), acrossMm: round(acrossMm, 1) })),
    topsOver: crop.topsOver === null ? null : formatDay(crop.topsOver),
    marks: crop.marks.map(({ kind, day, span }) => ({
      kind,
      date: formatDay(day),
      from: span && formatDay(span.from),
      to: span && formatDay(span.to),
    })),
  };
}
