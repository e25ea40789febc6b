import type { LearntSeason, SeasonSummary, Standing } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Counts of a few plants tell no fewer days than these. */
const leastDays = 3;
/** Nor fewer leaves than these: a count is out by as much. */
const leastLeaves = 0.5;
/** Dates and sizes that differ less are told as the same. */
const sameDays = 2;
const sameMm = 2;
/** A count stands for the crop as it is for so long, days. */
const countedDays = 21;
/** Feed takes about so long to show in leaves (common practice, no source), days. */
const feedDays = 14;

/**
 * How a crop stands by its leaves, what that means for tops and bulbs, and what can still be done; empty where no leaves
 * were counted of late.
 *
 * @param now the season as learnt
 * @param expected the season as it was expected in the same weather before anything was seen
 */
export function standingSentences(
  { asOf, standing, liftedOn }: LearntSeason,
  now: SeasonSummary,
  expected: SeasonSummary,
  speaker: Speaker,
): string[] {
  if (standing === null || asOf - standing.day > countedDays) return [];
  const stand = standOf(standing);
  const sentences = [seeSentence(standing, stand, asOf, speaker)];
  // of a crop out of the ground no more comes
  if (stand === 'on' || stand === 'unsaid' || liftedOn !== null) return sentences;
  const means = meansSentence(now, expected, speaker);
  if (means !== null) sentences.push(means);
  const todo = stand === 'behind' ? doSentence(now, asOf, speaker) : null;
  if (todo !== null) sentences.push(todo);
  return sentences;
}

/**
 * Behind or ahead only where the count lies outside what is usual, or a good way from its middle; beyond where a middling
 * crop does not come to it.
 */
function standOf({ leavesExpected: { p10, p50, p90 }, leavesSeen, daysBehind }: Standing) {
  const isUsual = leavesSeen >= p10 && leavesSeen <= p90;
  if (daysBehind === null) return isUsual ? 'on' : leavesSeen > p90 ? 'beyond' : 'unsaid';
  const least = isUsual ? 2 * leastDays : leastDays;
  if (Math.abs(daysBehind) < least || Math.abs(leavesSeen - p50) < leastLeaves) return 'on';
  return daysBehind > 0 ? 'behind' : 'ahead';
}

/** Whether a crop is neither behind nor ahead, as far as leaves were counted. */
export function standsAsUsual(standing: Standing | null): boolean {
  return standing === null || standOf(standing) === 'on';
}

function seeSentence(
  { day, leavesExpected: { p10, p90 }, leavesSeen, daysBehind }: Standing,
  stand: ReturnType<typeof standOf>,
  asOf: number,
  { say, day: date, number, numberRange }: Speaker,
): string {
  // halves as they were counted; a tenth more says nothing
  const shown = Math.round(leavesSeen * 2) / 2;
  return say('standing.see', {
    when: day === asOf ? 'now' : 'then',
    date: date(day),
    expected: numberRange(p10, p90),
    seen: number(shown, 1),
    stand,
    // as the two are told
    within: String(shown >= Math.round(p10) && shown <= Math.round(p90)),
    days: Math.abs(daysBehind ?? 0),
  });
}

function meansSentence(now: SeasonSummary, expected: SeasonSummary, speaker: Speaker): string | null {
  const { say, day, quantity } = speaker;
  const fall = now.neckFall.days;
  const fallBefore = expected.neckFall.days;
  if (!fall || !fallBefore || !now.bulbDiameterMm || !expected.bulbDiameterMm) return null;
  const later = fall.p50 - fallBefore.p50;
  const size = now.bulbDiameterMm.p50;
  const sizeBefore = expected.bulbDiameterMm.p50;
  return say('standing.means', {
    tops: Math.abs(later) < sameDays ? 'same' : later > 0 ? 'later' : 'earlier',
    date: day(fall.p50),
    days: Math.abs(later),
    size: Math.abs(size - sizeBefore) < sameMm ? 'same' : 'other',
    diameter: quantity('bulbLength', size),
    expected: quantity('bulbLength', sizeBefore),
  });
}

function doSentence(
  { plan, onset, neckFall }: SeasonSummary,
  asOf: number,
  { say, day }: Speaker,
): string | null {
  if (onset.days === null || onset.share < 0.5) return null;
  const onsetDay = onset.days.p50;
  const days = onsetDay - asOf;
  if (days >= feedDays) return say('standing.do.leaves', { days, date: day(onsetDay), water: plan.water });
  if (days > 0) return say('standing.do.wait', { date: day(onsetDay) });
  return neckFall.days !== null && asOf >= neckFall.days.p50 ? null : say('standing.do.late');
}
