import { surveyWays, waysOf } from '../choice/index.ts';
import { hoursFromHome, type OnionType } from '../plant/index.ts';
import { neededSunUpH, type Site } from '../season/index.ts';
import type { Abroad, FromAbroad, FromAbroadAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';

/** What growers have at the two ends of the world of onions. */
const typeOf: Readonly<Record<Abroad, OnionType>> = { tropics: 'tropical-short', north: 'northern-long' };

/** Whether the onion of a friend far away will do here, from seed, at its best start. */
export function fromAbroad(site: Site, asked: CommonAsked): FromAbroadAnswer {
  return {
    question: 'from-abroad',
    own: asked.survey.lead().summary,
    longestSunUpH: site.longestDayH,
    kinds: (['tropics', 'north'] as const).flatMap((from) => kindFrom(site, from, asked) ?? []),
  };
}

/** Null where it is a kind of the place. */
export function kindFrom(
  site: Site,
  from: Abroad,
  { today, options }: Pick<CommonAsked, 'today' | 'options'>,
): FromAbroad | null {
  const type = typeOf[from];
  if (hoursFromHome(type, site.longestDayH, false) === 0) return null;
  const ways = waysOf(site, { type, traits: null }, ['direct-seed', 'raised-seedlings']);
  const { summary } = surveyWays(site, ways, today, options).best();
  return { from, summary, neededSunUpH: neededSunUpH(site, summary.needPhotoperiodH) };
}
