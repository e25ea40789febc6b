import type { ClassAnswer, DayNumber, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { comingDay } from './coming-day.ts';
import { isNearlyFull } from './nearly-full.ts';

/** A kind at its best start, as a headline tells it. */
export type Told = Pick<ClassAnswer, 'type' | 'bestStart' | 'verdict' | 'gamble' | 'summary'>;

/** The same of any season. */
export function toldOf(summary: SeasonSummary): Told {
  const { plan, outcome, gamble } = summary;
  return { type: plan.type, bestStart: plan.start, verdict: outcome, gamble, summary };
}

/** Who is meant where no kind does well: all that a place might grow, or those of a list. */
export type Among = 'all' | 'list';

/** What a headline knows. */
export type Advice = {
  /** The best of the year. */
  lead: Told;
  /** A kind that ends better than the best in rank: what is then said of that one is not said of all. */
  better: Told | null;
  /** The best of what is in time today; null where nothing is. */
  now: Told | null;
};

/** What the answer is about: today before another year. */
export function namedOf<Kind extends Told>({ lead, now }: { lead: Kind; now: Kind | null }): Kind {
  return now ?? lead;
}

/**
 * The answer in one sentence: what to buy, when to start, when tops go over; or what to grow instead. What is in time
 * today is told before what would be best in another year.
 */
export function whereHeadline(
  advice: Advice,
  place: string,
  today: DayNumber,
  speaker: Speaker,
  among: Among = 'all',
): string {
  const { say, years, quantity } = speaker;
  const { better } = advice;
  const { summary, verdict, gamble, type, bestStart } = namedOf(advice);
  const neckFall = summary.neckFall.days?.p50;
  const values = {
    place,
    among,
    type: say(`type.${type}`),
    buy: buyWords({ type, bestStart, summary }, today, speaker),
    years: years(summary.seasonShares.good, summary.years),
    size: summary.bulbDiameterMm ? quantity('bulbLength', summary.bulbDiameterMm.p50) : say('none'),
    neckFall: neckFall === undefined ? '' : comingDay(neckFall, today, speaker),
    instead: insteadWords(speaker),
  };
  if (verdict === 'good') return say('where.good', values);
  const form = gamble ? 'gamble' : verdict === 'small' ? 'small' : 'none';
  if (better === null) return say(isNearlyFull(summary) ? 'where.nearly' : `where.${form}`, values);
  return say(`where.${form}-but`, {
    ...values,
    better: buyWords(better, today, speaker),
    betterYears: years(better.summary.seasonShares.good, better.summary.years),
  });
}

/** The best start of the year, where the headline is about today and not about that itself. */
export function bestOfYearSentence(
  { lead, now }: Pick<Advice, 'lead' | 'now'>,
  today: DayNumber,
  speaker: Speaker,
): string | null {
  if (now === null || lead.verdict !== 'good') return null;
  const { plan, neckFall } = lead.summary;
  const nowPlan = now.summary.plan;
  const isSameWay = plan.type === nowPlan.type && plan.start === nowPlan.start;
  if (isSameWay && plan.startDay === nowPlan.startDay) return null;
  const { say, day } = speaker;
  if (isSameWay) return say('where.best-day', { date: day(plan.startDay) });
  return say('where.best-of-year', {
    buy: buyWords(lead, today, speaker),
    neckFall: neckFall.days ? comingDay(neckFall.days.p50, today, speaker) : say('never'),
  });
}

function buyWords(
  { type, bestStart, summary }: Pick<Told, 'type' | 'bestStart' | 'summary'>,
  today: DayNumber,
  { say, ...speaker }: Speaker,
): string {
  const { startDay } = summary.plan;
  const isNow = startDay <= today;
  return say(`${isNow ? 'buy-now' : 'buy'}.${bestStart}`, {
    type: say(`type.${type}`),
    date: comingDay(startDay, today, { say, ...speaker }),
  });
}

const insteads = ['instead.bunching', 'instead.shallots', 'instead.potato-onions', 'instead.leeks'] as const;

/** What to grow where no bulb onion does well. */
export function insteadWords({ say, any }: Speaker): string {
  return any(insteads.map((instead) => say(instead)));
}
