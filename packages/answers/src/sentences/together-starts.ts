import type { Speaker } from '@neckfall/words';
import { isUsual } from '../facts/index.ts';
import type { SetBeside } from './together-line.ts';

/** Dates this near each other are told as one, days. */
const nearDays = 2;

/** What starts of one onion set beside each other show: the widest and the smallest bulbs, and when they start. */
export function startsHeadline(lines: readonly SetBeside[], place: string, speaker: Speaker): string {
  const { say, all, day, quantity } = speaker;
  const wide = lines
    .filter(({ summary }) => isUsual(summary.onset) && summary.bulbDiameterMm !== null)
    .toSorted((a, b) => widthOf(b) - widthOf(a));
  if (wide.length === 0) return say('together.starts.none', { place });
  const [best, least] = [wide[0], wide[wide.length - 1]];
  const onsets = wide.map(({ summary }) => Math.round(summary.onset.days!.p50));
  const days = wide.map(({ summary }) => calendarDay(Math.round(summary.onset.days!.p50)));
  const [first, last] = [days.indexOf(Math.min(...days)), days.indexOf(Math.max(...days))];
  const isNear = days[last] - days[first] <= nearDays;
  const headline = say(best === least ? 'together.starts.one' : 'together.starts', {
    place,
    best: best.name,
    bestSize: quantity('bulbLength', widthOf(best)),
    least: least.name,
    leastSize: quantity('bulbLength', widthOf(least)),
    onset: isNear
      ? say('together.starts.about', { date: day(onsets[first]) })
      : say('together.starts.between', { from: day(onsets[first]), to: day(onsets[last]) }),
  });
  const never = lines.filter((line) => !wide.includes(line)).map(({ name }) => name);
  return never.length === 0
    ? headline
    : `${headline} ${say('together.starts.never', { starts: all(never) })}`;
}

const widthOf = ({ summary }: SetBeside) => summary.bulbDiameterMm!.p50;

/** Bulbs of one place start in one season, whatever year their crops were begun in: days from 1 January 1970 on, by the year. */
function calendarDay(dayNumber: number): number {
  const yearDays = 365.2425;
  return Math.round(((dayNumber % yearDays) + yearDays) % yearDays);
}
