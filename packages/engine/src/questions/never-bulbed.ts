import type { SeasonSummary, Site } from '../season/index.ts';
import { neededSunUpH } from '../season/index.ts';
import type { NeverBulbedAnswer } from './common-answer.ts';
import type { CommonAsked } from './common-asked.ts';
import { kindFrom } from './from-abroad.ts';
import { lateSowing } from './late-sowing.ts';

/** From this share of the years without a bulb on a strange kind is the likeliest reason. */
const often = 0.3;
/** Where not even the best start of a kind comes good so often, the place is the reason. */
const hardlyEver = 0.3;

/**
 * Why an onion never bulbed here: the place, a kind that waits for days that hardly come, or seed sown too late. Of sets and
 * plants hardly any is started so late that it makes no bulb.
 */
export function neverBulbed(site: Site, asked: CommonAsked): NeverBulbedAnswer {
  const classes = asked.survey.classes();
  const [own, ...others] = classes;
  const north = kindFrom(site, 'north', asked);
  const strange = [...others.map(({ summary }) => summary), ...(north ? [north.summary] : [])]
    .filter(({ seasonShares }) => seasonShares['no-bulb'] >= often)
    .sort((a, b) => b.needPhotoperiodH - a.needPhotoperiodH);
  return {
    question: 'never-bulbed',
    own: own.summary,
    longestSunUpH: site.longestDayH,
    stranger: strange[0] ? strangerOf(site, strange[0]) : null,
    late: firstLate(site, asked),
    isPlace: classes.every(({ summary }) => summary.seasonShares.good < hardlyEver),
  };
}

function strangerOf(site: Site, summary: SeasonSummary): NeverBulbedAnswer['stranger'] {
  return { summary, neededSunUpH: neededSunUpH(site, summary.needPhotoperiodH) };
}

/** What is sold at a place is what may have been sown late. */
function firstLate(site: Site, asked: CommonAsked): NeverBulbedAnswer['late'] {
  const [own, ...others] = asked.survey.classes();
  for (const one of [own, ...others.filter(({ isAtHome }) => isAtHome)]) {
    const late = lateSowing(site, one.class, asked);
    if (late) return late;
  }
  return null;
}
