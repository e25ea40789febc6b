import type { DayNumber, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { StandOn } from '../facts/index.ts';
import { type WeekCode, weekOf } from '../jobs/index.ts';

/** Depths to sow and to set plants: 6–13 mm (University of Minnesota Extension), 25 mm (Texas Extension). */
const depthsMm = { 'direct-seed': 13, 'bought-transplants': 25 } as const;

/** What to do, said of this week. */
export function weekSentence(
  summary: SeasonSummary,
  stand: StandOn,
  speaker: Speaker,
  liftedOn: DayNumber | null = null,
): string {
  return speaker.say('week.this', {
    what: weekWords(summary, weekOf(summary, stand, liftedOn), stand.lostShare, speaker),
  });
}

/** What a week asks, in a sentence. @param lostShare share of years in which frost has left none */
export function weekWords(
  summary: SeasonSummary,
  code: WeekCode,
  lostShare: number,
  speaker: Speaker,
): string {
  const { say, day, quantity, years } = speaker;
  const { plan, plantOut, onset } = summary;
  const { start, water } = plan;
  const date = day(
    code === 'tray' || code === 'harden'
      ? (plantOut?.days?.p50 ?? plan.startDay)
      : code === 'feed'
        ? (onset.days?.p50 ?? plan.startDay)
        : plan.startDay,
  );
  switch (code) {
    case 'far':
    case 'prepare':
      return say(`week.${code}.${start}`, { date });
    case 'start':
      return say(`week.start.${start}`, {
        depth: start in depthsMm ? quantity('bulbLength', depthsMm[start as keyof typeof depthsMm]) : '',
        temperature:
          plan.start !== 'raised-seedlings' || plan.nurseryTempC === null
            ? 'outdoors'
            : quantity('temperature', plan.nurseryTempC),
      });
    default:
      return say(`week.${code}`, { date, water, years: years(lostShare, summary.years) });
  }
}

/** What should be seen of the crop on that day; null where there is nothing to tell it by. */
export function seeSentence(summary: SeasonSummary, stand: StandOn, speaker: Speaker): string | null {
  const { say, numberRange, quantityRange, day, dayRange, years } = speaker;
  const code = weekOf(summary, stand);
  if (code === 'wait') {
    const { days } = summary.emergence;
    return days && say('see.bare', { date: day(days.p50), range: dayRange(days.p10, days.p90) });
  }
  if (code === 'over' || code === 'cure') return null;
  if (stand.fallenShare >= 0.1) return say('see.fallen', { years: years(stand.fallenShare, summary.years) });
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
