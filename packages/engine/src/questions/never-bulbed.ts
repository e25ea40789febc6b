import { surveyWays, typeForClass, waysOf } from '../choice/index.ts';
import { classOfType } from '../plant/index.ts';
import { neededSunUpH, runPlan, type SeasonSummary, type Site, startedOn } from '../season/index.ts';
import type { NeverBulbedAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';
import { kindFrom } from './from-abroad.ts';

/** From this share of the years on a sowing is too late to make bulbs. */
const mostly = 0.5;
/** From this share on a strange kind is the likeliest reason. */
const often = 0.3;
/** Later starts are tried so far, weeks. */
const mostWeeks = 40;

/**
 * Why an onion never bulbed here: a kind that waits for days that hardly come, or seed of the own one sown too late. Of
 * sets and plants hardly any is started so late that it makes no bulb.
 */
export function neverBulbed(site: Site, asked: CommonAsked): NeverBulbedAnswer {
  const { survey, today, options } = asked;
  const [own, ...others] = survey.classes();
  const north = kindFrom(site, 'north', asked);
  const strange = [...others.map(({ summary }) => summary), ...(north ? [north.summary] : [])]
    .filter(({ seasonShares }) => seasonShares['no-bulb'] >= often)
    .sort((a, b) => b.needPhotoperiodH - a.needPhotoperiodH);
  const seed = surveyWays(site, waysOf(site, { class: own.class }, ['direct-seed']), today, options).best();
  return {
    question: 'never-bulbed',
    own: own.summary,
    longestSunUpH: site.longestDayH,
    stranger: strange[0]
      ? { summary: strange[0], neededSunUpH: neededSunUpH(site, strange[0].needPhotoperiodH) }
      : null,
    late: firstTooLate(site, seed.summary),
  };
}

/** While packets of the class hold the same plant: past summer they hold another. */
function firstTooLate(site: Site, { plan }: SeasonSummary): SeasonSummary | null {
  const printed = classOfType[plan.type];
  for (let week = 0; week <= mostWeeks; week++) {
    const day = plan.startDay + 7 * week;
    if (typeForClass(site, printed, plan.start, day) !== plan.type) return null;
    const summary = runPlan(site, startedOn(plan, day));
    if (summary.seasonShares['no-bulb'] >= mostly) return summary;
  }
  return null;
}
