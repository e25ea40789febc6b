import { climateYearDays, type DayNumber, daysSinceLongest } from '../calendar/index.ts';
import { isAutumnStart, surveyWays, waysOf } from '../choice/index.ts';
import { dayLengthClasses } from '../plant/index.ts';
import { runPlan, type SeasonSummary, type Site } from '../season/index.ts';
import type { SowAutumnAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';

/** Seed that is to stand the winter is sown no sooner after the longest day, days (common practice, no source). */
const autumnFromDays = 45;
/** Latitude of the tropics, degrees. */
const tropicDeg = 23.44;

/** Whether onions can be sown in autumn: the best such sowing in the bed against the best of the rest of the year. */
export function sowAutumn(site: Site, { today, options }: CommonAsked): SowAutumnAnswer {
  const { latitudeDeg } = site.climate;
  const isAutumn = (day: DayNumber) =>
    isAutumnStart(day, latitudeDeg) && daysSinceLongest(day, latitudeDeg) >= autumnFromDays;
  const bestOf = (isMeant: (day: DayNumber) => boolean): SeasonSummary => {
    const ways = dayLengthClasses
      .flatMap((dayLengthClass) => waysOf(site, { class: dayLengthClass }, ['direct-seed']))
      .map((way) => ({ ...way, isUsual: (day: DayNumber) => way.isUsual(day) && isMeant(day) }))
      .filter(({ isUsual }) => Array.from({ length: climateYearDays }, (_, at) => today + at).some(isUsual));
    return surveyWays(site, ways, today, options).best().summary;
  };
  const autumn = bestOf(isAutumn);
  const spring = bestOf((day) => !isAutumnStart(day, latitudeDeg));
  return {
    question: 'sow-autumn',
    autumn,
    fleece: runPlan(site, { ...autumn.plan, cover: 'fleece' }),
    spring,
    soonerDays: soonerBy(autumn, spring),
    isTropical: Math.abs(latitudeDeg) < tropicDeg,
  };
}

/** Within a year: whichever year they are started in. */
function soonerBy(autumn: SeasonSummary, spring: SeasonSummary): number | null {
  const [a, b] = [autumn.neckFall, spring.neckFall];
  if (!a.days || !b.days || a.share < 0.5 || b.share < 0.5) return null;
  const apart = (((b.days.p50 - a.days.p50) % climateYearDays) + climateYearDays) % climateYearDays;
  return apart > climateYearDays / 2 ? apart - climateYearDays : apart;
}
