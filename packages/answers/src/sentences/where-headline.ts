import type { ClassAnswer, DayNumber } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { comingDay } from './coming-day.ts';

/** A kind at its best start, as a headline tells it. */
export type Told = Pick<ClassAnswer, 'type' | 'bestStart' | 'verdict' | 'gamble' | 'summary'>;

/** Who is meant where no kind does well: all that a place might grow, or those of a list. */
export type Among = 'all' | 'list';

/**
 * The answer in one sentence: what to buy, when to start, when tops go over; or what to grow instead.
 *
 * @param better a kind that ends better than the best in rank: what is then said of that one is not said of all
 */
export function whereHeadline(
  best: Told,
  better: Told | null,
  place: string,
  today: DayNumber,
  speaker: Speaker,
  among: Among = 'all',
): string {
  const { say, years, any } = speaker;
  const { summary, verdict, gamble, type } = best;
  const neckFall = summary.neckFall.days;
  const values = {
    place,
    among,
    type: say(`type.${type}`),
    buy: buyWords(best, today, speaker),
    years: years(summary.seasonShares.good, summary.years),
    neckFall: neckFall === null ? '' : comingDay(neckFall.p50, today, speaker),
    instead: any(insteads.map((instead) => say(instead))),
  };
  if (verdict === 'good') return say('where.good', values);
  const form = gamble ? 'gamble' : verdict === 'small' ? 'small' : 'none';
  if (better === null) return say(`where.${form}`, values);
  return say(`where.${form}-but`, {
    ...values,
    better: buyWords(better, today, speaker),
    betterYears: years(better.summary.seasonShares.good, better.summary.years),
  });
}

function buyWords({ type, bestStart, summary }: Told, today: DayNumber, speaker: Speaker): string {
  return speaker.say(`buy.${bestStart}`, {
    type: speaker.say(`type.${type}`),
    date: comingDay(summary.plan.startDay, today, speaker),
  });
}

const insteads = ['instead.bunching', 'instead.shallots', 'instead.potato-onions', 'instead.leeks'] as const;
