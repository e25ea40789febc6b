import { isGreenLot, keepHeadline, keepKind } from '@neckfall/answers';
import { dayNumber, type KeepGap, type KeepMonth, type KeepYear, monthLengths } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { DataTableProps } from '../drawing/data-table.tsx';
import type { StoreGap, StoreYearProps } from './store-year-props.ts';

const weekDays = 7;

/** The strings of a kitchen's year, each bulb what it eats in a week. */
export function storeYearOf(year: KeepYear, today: number, speaker: Speaker): Omit<StoreYearProps, 'width'> {
  const { say, quantity } = speaker;
  const { months, lots, household } = year;
  // what is pulled green comes last, and into no store
  const stored = lots.filter((lot) => !isGreenLot(lot)).length;
  const weekKg = household.gramsPerWeek / 1000;
  const gaps = year.gaps.map((gap): StoreGap => {
    const [from, to] = [monthsTo(gap.from, months), monthsTo(gap.to + 1, months)];
    return { from, to, text: say('app.keep.picture.bare', { range: whole(rangeOf(gap, speaker)) }) };
  });
  return {
    months: months.map(({ month, lotsKg, lostKg, storeKg, from }, at) => {
      const days = monthLengths[month - 1];
      const bare = gaps.reduce((sum, gap) => sum + shared(gap, at), 0);
      return {
        name: speaker.month(month),
        days,
        kept: lotsKg.slice(0, stored).map((kg) => kg / weekKg),
        eaten: from.length === 0 ? 0 : ((1 - bare) * days) / weekDays,
        lost: lostKg / weekKg,
        span: [storeKg.p10 / weekKg, storeKg.p90 / weekKg],
      };
    }),
    gaps: gaps.filter(({ from, to }) => to > from),
    lots: lotNames(year, speaker).slice(0, stored),
    need: 365 / 12 / weekDays,
    words: {
      week: say('app.keep.picture.week', { week: quantity('crop', weekKg) }),
      eaten: say('app.keep.picture.eaten'),
      lost: say('app.keep.picture.lost'),
      need: say('app.keep.picture.need'),
      span: say('app.keep.picture.span'),
    },
    summary: say('app.keep.picture.summary', { answer: keepHeadline(year, today, speaker) }),
  };
}

/** Lots by their numbers and what they are. */
export function lotNames({ lots }: KeepYear, speaker: Speaker): string[] {
  return lots.map((lot, at) =>
    speaker.say(isGreenLot(lot) ? 'app.keep.lot.name-green' : 'app.keep.lot.name', {
      number: at + 1,
      kind: keepKind(lot, speaker),
    }),
  );
}

function rangeOf({ from, to }: KeepGap, { day, dayRange }: Speaker): string {
  return from === to ? day(from) : dayRange(from, to);
}

/** Never broken: a date alone on a line is no range. */
function whole(range: string): string {
  return range.replaceAll(' ', '\u00a0');
}

/** Months from the first told to a day, with the part of the last. */
function monthsTo(day: number, months: readonly KeepMonth[]): number {
  for (const [at, { year, month }] of months.entries()) {
    const begin = dayNumber(year, month, 1);
    const days = monthLengths[month - 1];
    if (day < begin + days) return Math.max(0, at + (day - begin) / days);
  }
  return months.length;
}

function shared({ from, to }: StoreGap, month: number): number {
  return Math.max(0, Math.min(to, month + 1) - Math.max(from, month));
}

/** The numbers of the picture. */
export function storeTableOf(year: KeepYear, speaker: Speaker): DataTableProps {
  const { say, quantity, quantityRange, monthWithYear, number, years } = speaker;
  const columns = ['month', 'need', 'store', 'lost', 'from', 'supplied'] as const;
  return {
    caption: say('app.keep.table'),
    head: columns.map((column) => say(`app.keep.column.${column}`)),
    rows: year.months.map(({ month, year: of, needKg, storeKg, lostKg, from, suppliedShare }) => [
      monthWithYear(of, month),
      quantity('crop', needKg),
      say('app.keep.between', {
        middle: quantity('crop', storeKg.p50),
        range: quantityRange('crop', storeKg.p10, storeKg.p90),
      }),
      quantity('crop', lostKg),
      from.length === 0 ? say('app.keep.from-none') : from.map((at) => number(at + 1)).join(', '),
      years(suppliedShare, year.years),
    ]),
  };
}
