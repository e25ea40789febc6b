import {
  type LineOn,
  type OnOwnDay,
  type PlaceYear,
  placeLabel,
  type SetBeside,
  startName,
} from '@neckfall/answers';
import {
  byYears,
  type CommonAxis,
  cropInYear,
  cropLineOf,
  type YearLineProps,
  yearLineOf,
} from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import type { LineAsked, LineKnown } from './line-asked.ts';

export type LineFound = Extract<LineKnown, { state: 'found' }>;

/** A line with its year, ready to be drawn. */
export type DrawnLine = {
  asked: LineAsked;
  found: LineFound;
  year: PlaceYear;
  /** The crop stands so many years later on the axis, and the place so many days. */
  years: number;
  shiftDays: number;
};

export type Drawn = { axis: CommonAxis; isLinedUp: boolean; lines: readonly DrawnLine[] };

export type Compared = 'places' | 'starts';

/** The picture of a line, but for what it shares with the others. */
export function pictureOf(
  { found, year, years }: DrawnLine,
  speaker: Speaker,
): Omit<YearLineProps, 'id' | 'width'> {
  const { told, days, needSunUpH } = found.reply;
  const crop = cropInYear(cropLineOf(told.summary, days, speaker), years);
  return { ...yearLineOf({ year, needSunUpH, today: null, crop, speaker }), note: null };
}

/** What is told of each line, under names that tell them apart. */
export function toldLines(
  lines: readonly { asked: LineAsked; found: LineFound }[],
  compared: Compared,
  speaker: Speaker,
): SetBeside[] {
  const short = lines.map((line) => shortName(line, compared, speaker));
  return lines.map(({ asked, found }, i) => {
    const { told, days, needSunUpH, longestH, shortestH, coldestC } = found.reply;
    const isClear = short.filter((name) => name === short[i]).length === 1;
    return {
      name: isClear || compared === 'starts' ? short[i] : longName({ asked, found }, speaker),
      latitudeDeg: found.located.latitudeDeg,
      summary: told.summary,
      rows: days,
      coldestC,
      needSunUpH,
      longestH,
      shortestH,
    };
  });
}

function shortName(
  line: { asked: LineAsked; found: LineFound },
  compared: Compared,
  speaker: Speaker,
): string {
  if (compared === 'starts') return startName(line.found.reply.told.summary.plan, speaker);
  return line.found.located.town?.name ?? longName(line, speaker);
}

/** What stands over a line: its start where starts are compared, else its place in full. */
export function headOf(line: DrawnLine, { name }: SetBeside, compared: Compared, speaker: Speaker): string {
  return compared === 'starts' ? name : longName(line, speaker);
}

/** As in the bar at the head of the page: a town with its country, the reader's own name, or the point. */
export function longName(
  { asked, found: { located } }: { asked: LineAsked; found: LineFound },
  speaker: Speaker,
): string {
  return (located.town ? null : asked.at.name) ?? placeLabel(located, speaker);
}

/** A line on a day of the axis: its own date there, and the date in the year of its crop. */
export function lineOn({ found, year, years, shiftDays }: DrawnLine, day: number): LineOn & OnOwnDay {
  const ownDay = day + shiftDays;
  const at = Math.max(0, Math.min(year.sunUpH.length - 1, ownDay - year.firstDay));
  return {
    summary: found.reply.told.summary,
    rows: found.reply.days,
    cropDay: byYears(ownDay, -years),
    day: ownDay,
    sunUpH: year.sunUpH[at],
    highC: year.highC[at],
  };
}
