import type { DayNumber, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { StandOn } from '../facts/index.ts';

/** Days about a start in which nothing is looked for yet, and after tops went over till bulbs are out of their bed. */
const startAround = 3;
const liftUntil = 14;

/** What should be seen of the crop on that day; null where there is nothing to tell it by. */
export function seeSentence(summary: SeasonSummary, stand: StandOn, speaker: Speaker): string | null {
  const { say, numberRange, quantityRange, day, dayRange, years } = speaker;
  const { plan, plantOut, emergence, neckFall } = summary;
  if (neckFall.days && stand.day >= neckFall.days.p50 + liftUntil) return null;
  const up = emergence.days;
  if (!plantOut && up && stand.day > plan.startDay + startAround && stand.day < up.p50)
    return say('see.bare', { date: day(up.p50), range: dayRange(up.p10, up.p90) });
  if (stand.fallenShare >= 0.1) return say('see.fallen', { years: years(stand.fallenShare, summary.years) });
  if (stand.lostShare > 0.5) return say('see.lost', { years: years(stand.lostShare, summary.years) });
  const { leavesGreen, bulbMm } = stand;
  if (!leavesGreen) return null;
  const words = {
    leaves: numberRange(Math.round(leavesGreen.low), Math.round(leavesGreen.high)),
    most: Math.round(leavesGreen.high),
  };
  if (bulbMm && bulbMm.low >= leastBulbMm)
    return say('see.bulbs', { ...words, across: quantityRange('bulbLength', bulbMm.low, bulbMm.high) });
  return say('see.leaves', words);
}

/** A swelling narrower than this can't be told from a neck, mm (common practice, no source). */
export const leastBulbMm = 18;

/** When tops go over, or went; null where they mostly don't. */
export function topsSentence(summary: SeasonSummary, today: DayNumber, speaker: Speaker): string | null {
  const { days, share } = summary.neckFall;
  if (days === null || share < 0.5) return null;
  const { p10, p50, p90 } = days;
  const { say, day, dayRange, years } = speaker;
  const words = { date: day(p50), range: dayRange(p10, p90), years: years(share, summary.years) };
  if (today > p50) return say('tops.past', words);
  return share < 1
    ? say('tops.some', { ...words, otherwise: standingOf(summary) })
    : say('tops.ahead', words);
}

/** What mostly comes of the years in which tops do not go over. */
function standingOf({ seasonShares }: SeasonSummary): string {
  const ways: [string, number][] = [
    ['neck', seasonShares['not-ripe']],
    ['bulb', seasonShares['no-bulb']],
    ['winter', seasonShares['winter-killed']],
  ];
  const [way, share] = ways.reduce((a, b) => (b[1] > a[1] ? b : a));
  return share > 0 ? way : 'none';
}
