import type { ClassAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** The answer in one sentence: what to buy, when to start, when tops go over; or what to grow instead. */
export function whereHeadline(
  best: Pick<ClassAnswer, 'type' | 'bestStart' | 'verdict' | 'gamble' | 'summary'>,
  place: string,
  { say, day, years, any }: Speaker,
): string {
  const { summary, verdict, gamble } = best;
  const neckFall = summary.neckFall.p50;
  const values = {
    place,
    buy: say(`buy.${best.bestStart}`, { type: say(`type.${best.type}`), date: day(summary.plan.startDay) }),
    years: years(summary.seasonShares.good),
    neckFall: neckFall === null ? '' : day(neckFall),
  };
  if (verdict === 'good') return say('where.good', values);
  if (gamble) return say('where.gamble', values);
  if (verdict === 'small') return say('where.small', values);
  return say('where.none', { place, instead: any(insteads.map((instead) => say(instead))) });
}

const insteads = ['instead.bunching', 'instead.shallots', 'instead.potato-onions', 'instead.leeks'] as const;
