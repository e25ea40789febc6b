import {
  type ClassAnswer,
  type DayNumber,
  type PlaceAnswer,
  type SeasonSummary,
  startWays,
  type TodayAnswer,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { comingDay } from './coming-day.ts';

/** Starts that are good as long as this, days, are good all year round. */
const allYearDays = 340;

/**
 * What is still in time for the onion that suits the place best, in whole sentences; where that is nothing, what is in
 * time for the others that are at home there.
 */
export function todaySentence(
  { classes, today: answers }: Pick<PlaceAnswer, 'classes' | 'today'>,
  today: DayNumber,
  speaker: Speaker,
): string {
  const { say } = speaker;
  const [lead, ...rest] = classes;
  const starts = answers.filter((start) => start.class === lead.class);
  const open = starts.filter(({ stillGoodUntil }) => stillGoodUntil !== null);
  const next = starts
    .filter(({ nextFrom }) => nextFrom !== null)
    .sort((a, b) => (a.nextFrom ?? 0) - (b.nextFrom ?? 0));
  const nextWords = () =>
    groupWords(
      next,
      ({ nextFrom }) => nextFrom ?? 0,
      (start, from) => say('today.from', { start, date: comingDay(from, today, speaker) }),
      speaker,
    );
  if (open.length > 0) {
    const sentences = [say('today.open', { starts: openWords(open, today, speaker) })];
    if (next.length > 0) sentences.push(say('today.next', { starts: nextWords() }));
    return sentences.join(' ');
  }
  const others = rest.flatMap((kind) => otherSentence(kind, answers, today, speaker));
  const words = { type: say(`class.${lead.class}`), starts: next.length > 0 ? nextWords() : '' };
  const meanwhile = meanwhileSentence(lead.summary, today, speaker);
  if (next.length === 0) return [...others, say('today.never', words)].join(' ');
  if (others.length === 0) return `${say('today.nothing-now', words)} ${meanwhile}`;
  // what can be done today comes first, and "nothing" is not said beside it
  return [...others, say('today.lead-waits', words)].join(' ');
}

/** Seed is ordered this long before it is sown, days (common practice, no source). */
const orderDays = 21;

/** Sets keep this long at most, days (common practice, no source). */
const setsKeepDays = 200;

/** What to do until the best start comes round. */
export function meanwhileSentence(
  { plan }: Pick<SeasonSummary, 'plan'>,
  today: DayNumber,
  speaker: Speaker,
): string {
  const { start, startDay } = plan;
  const { from } = startWays[start];
  const date = from === 'seed' ? Math.max(today, startDay - orderDays) : startDay;
  const isTooLong = from === 'sets' && startDay - today > setsKeepDays;
  return speaker.say(isTooLong ? 'today.until-then.no-sets' : `today.until-then.${from}`, {
    date: comingDay(date, today, speaker),
  });
}

function otherSentence(
  { class: dayLengthClass, type, isAtHome }: ClassAnswer,
  answers: readonly TodayAnswer[],
  today: DayNumber,
  speaker: Speaker,
): string[] {
  const open = answers.filter((start) => start.class === dayLengthClass && start.stillGoodUntil !== null);
  if (open.length === 0 || !isAtHome) return [];
  const { say } = speaker;
  return [say('today.other', { type: say(`type.${type}`), starts: openWords(open, today, speaker) })];
}

/** Starts that are in time, and until when. */
function openWords(open: readonly TodayAnswer[], today: DayNumber, speaker: Speaker): string {
  const until = ({ stillGoodUntil }: TodayAnswer) =>
    Math.min(Math.max(stillGoodUntil ?? today, today), today + allYearDays);
  return groupWords(
    open,
    until,
    (start, day) => {
      if (day === today) return speaker.say('today.this-week', { start });
      return day === today + allYearDays
        ? speaker.say('today.any-week', { start })
        : speaker.say('today.until', { start, date: comingDay(day, today, speaker) });
    },
    speaker,
  );
}

/** Starts with their days; those of one day together. */
function groupWords(
  starts: readonly TodayAnswer[],
  dayOf: (start: TodayAnswer) => DayNumber,
  words: (start: string, day: DayNumber) => string,
  { say, all }: Speaker,
): string {
  const days = [...new Set(starts.map(dayOf))];
  const groups = days.map((day) =>
    words(
      all(starts.filter((start) => dayOf(start) === day).map(({ start }) => say(`today.start.${start}`))),
      day,
    ),
  );
  if (groups.length === starts.length) return all(groups);
  return groups.reduceRight((rest, first) => say('list.parts', { first, rest }));
}
