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
  const { say, all } = speaker;
  const [lead, ...rest] = classes;
  const starts = answers.filter((start) => start.class === lead.class);
  const open = starts.filter(({ stillGoodUntil }) => stillGoodUntil !== null);
  const next = starts
    .filter(({ nextFrom }) => nextFrom !== null)
    .sort((a, b) => (a.nextFrom ?? 0) - (b.nextFrom ?? 0))
    .map((start) =>
      say('today.from', {
        start: startWords(start, speaker),
        date: comingDay(start.nextFrom ?? 0, today, speaker),
      }),
    );
  if (open.length > 0) {
    const sentences = [
      say('today.open', { starts: all(open.map((start) => untilWords(start, today, speaker))) }),
    ];
    if (next.length > 0) sentences.push(say('today.next', { starts: all(next) }));
    return sentences.join(' ');
  }
  const others = rest.flatMap((kind) => otherSentence(kind, answers, today, speaker));
  const words = { type: say(`class.${lead.class}`), starts: all(next) };
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
  const { say, all } = speaker;
  return [
    say('today.other', {
      type: say(`type.${type}`),
      starts: all(open.map((start) => untilWords(start, today, speaker))),
    }),
  ];
}

function untilWords(answer: TodayAnswer, today: DayNumber, speaker: Speaker): string {
  const start = startWords(answer, speaker);
  const until = answer.stillGoodUntil ?? today;
  if (until <= today) return speaker.say('today.this-week', { start });
  return until - today >= allYearDays
    ? speaker.say('today.any-week', { start })
    : speaker.say('today.until', { start, date: comingDay(until, today, speaker) });
}

function startWords({ start }: TodayAnswer, { say }: Speaker): string {
  return say(`today.start.${start}`);
}
