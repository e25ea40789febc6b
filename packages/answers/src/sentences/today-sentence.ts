import type { PlaceAnswer, TodayAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** What is still in time for the onion that suits the place best, in whole sentences. */
export function todaySentence({ classes, today }: PlaceAnswer, { say, day, all }: Speaker): string {
  const starts = today.filter((start) => start.class === classes[0].class);
  const open = starts.filter(({ stillGoodUntil }) => stillGoodUntil !== null);
  const next = starts.filter(({ nextFrom }) => nextFrom !== null);
  if (open.length === 0 && next.length === 0) return say('today.never');
  const name = ({ start }: TodayAnswer) => say(`today.start.${start}`);
  const sentences: string[] = [];
  if (open.length > 0) {
    const until = open.map((start) =>
      say('today.until', { start: name(start), date: day(start.stillGoodUntil ?? 0) }),
    );
    sentences.push(say('today.open', { starts: all(until) }));
  }
  if (next.length > 0) {
    const from = next
      .toSorted((a, b) => (a.nextFrom ?? 0) - (b.nextFrom ?? 0))
      .map((start) => say('today.from', { start: name(start), date: day(start.nextFrom ?? 0) }));
    sentences.push(say(open.length > 0 ? 'today.next' : 'today.nothing-now', { starts: all(from) }));
  }
  return sentences.join(' ');
}
