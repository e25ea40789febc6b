import type { FrostDate } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { PlaceFacts } from '../facts/index.ts';

/** Longest and shortest day, and the frosts that end and begin the season. */
export function skyAndFrost({ sunUpH, frost }: PlaceFacts, speaker: Speaker): string[] {
  const { say, dayLength } = speaker;
  const days = say('where.longest-day', {
    longest: dayLength(Math.max(...sunUpH)),
    shortest: dayLength(Math.min(...sunUpH)),
  });
  if (frost.lastSpring.share < rareFrost) return [days, say('where.frost-never')];
  return [
    days,
    frostSentence('spring', frost.lastSpring, speaker),
    frostSentence('autumn', frost.firstAutumn, speaker),
  ];
}

/** Frost in fewer winters than this is not worth a date. */
const rareFrost = 0.05;
const usualFrost = 0.95;

/** Where frost comes in nearly every winter, days without it can be counted. */
export function freezesEachWinter({ frost }: PlaceFacts): boolean {
  return Math.min(frost.lastSpring.share, frost.firstAutumn.share) >= usualFrost;
}

function frostSentence(season: 'spring' | 'autumn', { share, days }: FrostDate, speaker: Speaker): string {
  const { say, dayOfYear, dayOfYearRange, years } = speaker;
  if (days === null) return say('where.frost-never');
  // climate days count from 0
  const values = {
    date: dayOfYear(days.p50 + 1),
    range: say('range.8-in-10', { range: dayOfYearRange(days.p10 + 1, days.p90 + 1) }),
    years: years(share, null),
  };
  return say(share < usualFrost ? `where.frost-${season}-some` : `where.frost-${season}`, values);
}
