import type { DayNumber } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { isUsual } from '../facts/index.ts';
import type { SetBeside } from './together-line.ts';

/** A place on the day that is looked at: its own date, and its hours of sun-up then. */
export type OnOwnDay = { day: DayNumber; sunUpH: number };

/** Days this near each other are told as alike, h. */
const alikeH = 0.25;
/** So many places are told one by one, and any number of both halves of the globe, where first and last say little. */
const mostTold = 3;

type Line = SetBeside & OnOwnDay;

/** What places set beside each other show: how long days last on one day, and when bulbs start. */
export function togetherHeadline(lines: readonly Line[], speaker: Speaker): string {
  const { say, all, day } = speaker;
  const days = daysWords(lines, speaker);
  const starting = lines.filter(({ summary }) => isUsual(summary.onset));
  const never = lines.filter((line) => !starting.includes(line)).map(({ name }) => name);
  const dateOf = ({ summary }: Line) => day(summary.onset.days!.p50);
  if (starting.length === 0) return say('together.bulbs.none', { days });
  const isOfBoth = lines.some(isSouth) && !lines.every(isSouth);
  if (lines.length <= mostTold || isOfBoth) {
    const list = [
      ...starting.map((line) => say('together.bulbs.at', { date: dateOf(line), place: line.name })),
      ...(never.length > 0 ? [say('together.bulbs.never', { places: all(never) })] : []),
    ];
    return say('together.bulbs', { days, list: all(list) });
  }
  const inOrder = starting.toSorted((a, b) => afterMidwinter(a) - afterMidwinter(b));
  const [first, last] = [inOrder[0], inOrder[inOrder.length - 1]];
  return say(first === last ? 'together.bulbs.only' : 'together.bulbs.range', {
    days,
    first: first.name,
    firstDate: dateOf(first),
    last: last.name,
    lastDate: dateOf(last),
    never: never.length > 0 ? all(never) : 'none',
  });
}

const isSouth = ({ latitudeDeg }: Line) => latitudeDeg < 0;

/** Days since midwinter of its half of the globe: seasons are of any year. */
function afterMidwinter({ summary, latitudeDeg }: Line): number {
  const yearDays = 365.2425;
  // 21 June 1970 and 21 December 1969, day numbers
  const midwinter = latitudeDeg < 0 ? 171 : -11;
  return (((summary.onset.days!.p50 - midwinter) % yearDays) + yearDays) % yearDays;
}

function daysWords(lines: readonly Line[], speaker: Speaker): string {
  const { say, all, dayLength } = speaker;
  const date = togetherDate(lines, speaker);
  const inOrder = lines.toSorted((a, b) => a.sunUpH - b.sunUpH);
  const [shortest, longest] = [inOrder[0], inOrder[inOrder.length - 1]];
  if (longest.sunUpH - shortest.sunUpH < alikeH) {
    const middle = inOrder[inOrder.length >> 1].sunUpH;
    return say('together.days.alike', {
      date,
      hours: dayLength(middle),
      places: all(lines.map(({ name }) => name)),
    });
  }
  return say(lines.length === 2 ? 'together.days.two' : 'together.days.range', {
    date,
    long: dayLength(longest.sunUpH),
    longPlace: longest.name,
    short: dayLength(shortest.sunUpH),
    shortPlace: shortest.name,
  });
}

/** One date for all, or one for each half of the globe. */
export function togetherDate(
  lines: readonly (Pick<OnOwnDay, 'day'> & Pick<SetBeside, 'latitudeDeg'>)[],
  { say, day }: Speaker,
): string {
  const north = lines.find(({ latitudeDeg }) => latitudeDeg >= 0);
  const south = lines.find(({ latitudeDeg }) => latitudeDeg < 0);
  if (!north || !south || day(north.day) === day(south.day)) return day(lines[0].day);
  return say('together.date.both', { north: day(north.day), south: day(south.day) });
}
