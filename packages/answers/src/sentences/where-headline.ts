import type { ClassAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { comingDay } from './coming-day.ts';

/** The answer in one sentence: what to buy, when to start, when tops go over; or what to grow instead. */
export function whereHeadline(
  best: Pick<ClassAnswer, 'type' | 'bestStart' | 'verdict' | 'gamble' | 'summary'>,
  place: string,
  today: number,
  speaker: Speaker,
): string {
  const { say, years, any } = speaker;
  const { summary, verdict, gamble } = best;
  const neckFall = summary.neckFall.p50;
  const values = {
    place,
    buy: say(`buy.${best.bestStart}`, {
      type: say(`type.${best.type}`),
      date: comingDay(summary.plan.startDay, today, speaker),
    }),
    years: years(summary.seasonShares.good),
    neckFall: neckFall === null ? '' : comingDay(neckFall, today, speaker),
  };
  if (verdict === 'good') return say('where.good', values);
  if (gamble) return say('where.gamble', values);
  if (verdict === 'small') return say('where.small', values);
  return say('where.none', { place, instead: any(insteads.map((instead) => say(instead))) });
}

const insteads = ['instead.bunching', 'instead.shallots', 'instead.potato-onions', 'instead.leeks'] as const;
