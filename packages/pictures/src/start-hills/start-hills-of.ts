import type { SeasonSummary, Spread, WhenAnswer } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { DataTableProps } from '../drawing/data-table.tsx';
import { type HillStart, type StartHillsProps, type Trouble, troubles } from './start-hills-props.ts';

export type StartHillsInput = {
  answer: WhenAnswer;
  /** First day of the axis (a day number); the year that follows is shown, its starts those of the answer in turn. */
  firstDay: number;
  today: number | null;
  /** The start chosen, a day number. */
  chosen: number | null;
  speaker: Speaker;
};

const yearDays = 365;

/** All the hills need but their id and width. */
export function startHillsOf(input: StartHillsInput): Omit<StartHillsProps, 'id' | 'width'> {
  const { answer, firstDay, today, chosen, speaker } = input;
  const { say } = speaker;
  const starts = startsFrom(answer, firstDay, speaker);
  const best = answer.starts.find(({ dayOfYear }) => dayOfYear === answer.best) ?? answer.starts[0];
  const bestDay = dayInYear(best.summary.plan.startDay, firstDay);
  return {
    summary: summaryOf(starts, bestDay, speaker),
    firstDay,
    days: yearDays,
    starts,
    today: today === null ? null : { day: today, text: say('picture.today', { date: speaker.day(today) }) },
    marker:
      chosen === null
        ? null
        : { day: chosen, text: say('picture.hills.start', { date: speaker.day(chosen) }) },
    months: Array.from({ length: 12 }, (_, month) => speaker.month(month + 1)),
    goodText: say('picture.hills.good'),
    troubleTexts: Object.fromEntries(
      troubles.map((trouble) => [trouble, say(`picture.hills.${trouble}`)]),
    ) as Record<Trouble, string>,
    everyText: say('picture.hills.every'),
    sizeText: sizeText(starts, speaker),
    leavesText: leavesText(starts, speaker),
  };
}

/** The same as a table, a start a row. */
export function startHillsTableOf({ answer, firstDay, speaker }: StartHillsInput): DataTableProps {
  const { say } = speaker;
  return {
    caption: say('picture.hills.table'),
    head: [
      say('picture.hills.column-start'),
      say('picture.hills.column-good'),
      say('picture.hills.column-wrong'),
      say('picture.hills.column-across'),
      say('picture.hills.column-leaves'),
    ],
    rows: startsFrom(answer, firstDay, speaker).map((start) => {
      const { day, shares, acrossMm, leavesGreen, tried, barredBy } = start;
      const worst = worstOf(shares);
      return [
        speaker.day(day),
        speaker.years(shares.good, tried),
        barredBy ?? say(worst ? `picture.hills.${worst}` : 'picture.hills.nothing'),
        acrossMm === null ? say('none') : speaker.quantityRange('bulbLength', acrossMm.low, acrossMm.high),
        leavesGreen === null ? say('none') : speaker.number(leavesGreen),
      ];
    }),
  };
}

/** The answer's starts moved into the year from `firstDay` on; a start is taken to repeat every year. */
function startsFrom({ starts }: WhenAnswer, firstDay: number, { say }: Speaker): HillStart[] {
  return starts
    .map(({ summary, hindrance }) => ({
      ...hillStart(summary, dayInYear(summary.plan.startDay, firstDay)),
      barredBy: hindrance && say(`picture.hills.${hindrance}`),
    }))
    .sort((a, b) => a.day - b.day);
}

function dayInYear(startDay: number, firstDay: number): number {
  return startDay + Math.ceil((firstDay - startDay) / yearDays) * yearDays;
}

function hillStart(
  { seasonShares, bulbDiameterMm, leavesGreenAtOnset, years }: SeasonSummary,
  day: number,
): Omit<HillStart, 'barredBy'> {
  return {
    day,
    shares: seasonShares,
    tried: years,
    acrossMm: sizes(bulbDiameterMm),
    leavesGreen: leavesGreenAtOnset?.p50 ?? null,
  };
}

function sizes(of: Spread | null): HillStart['acrossMm'] {
  return of === null || of.p50 <= 0 ? null : { low: of.p10, middle: of.p50, high: of.p90 };
}

function worstOf(shares: HillStart['shares']): Trouble | null {
  const worst = troubles.reduce((a, b) => (shares[b] > shares[a] ? b : a));
  return shares[worst] > 0 ? worst : null;
}

function sizeText(starts: readonly HillStart[], { say, quantityRange }: Speaker): string {
  const middles = starts.flatMap(({ acrossMm }) => (acrossMm ? [acrossMm.middle] : []));
  if (middles.length === 0) return say('picture.hills.no-size');
  const range = quantityRange('bulbLength', Math.min(...middles), Math.max(...middles));
  return say('picture.hills.size', { range });
}

function leavesText(starts: readonly HillStart[], { say, numberRange }: Speaker): string {
  const leaves = starts.flatMap(({ leavesGreen }) => (leavesGreen === null ? [] : [Math.round(leavesGreen)]));
  if (leaves.length === 0) return say('picture.hills.no-leaves');
  return say('picture.hills.leaves', { range: numberRange(Math.min(...leaves), Math.max(...leaves)) });
}

function summaryOf(starts: readonly HillStart[], bestDay: number, { say, day, years, all }: Speaker): string {
  const best = starts.find(({ day }) => day === bestDay) ?? starts[0];
  const wrongs = troubles.flatMap((trouble) => {
    const at = starts.reduce((a, b) => (b.shares[trouble] > a.shares[trouble] ? b : a));
    if (at.shares[trouble] < 0.3) return [];
    return [say('picture.hills.wrong', { verdict: say(`picture.hills.${trouble}`), date: day(at.day) })];
  });
  return [
    best.shares.good > 0
      ? say('picture.hills.summary-window', {
          best: day(best.day),
          years: years(best.shares.good, best.tried),
        })
      : say('picture.hills.summary-none', { tried: best.tried }),
    ...(wrongs.length > 0 ? [say('picture.hills.summary-wrong', { wrongs: all(wrongs) })] : []),
  ].join(' ');
}
