import { byYears, yearsToAxis } from '@neckfall/pictures';
import type { Drawn } from './drawn-lines.ts';

/** A day on the axis: the one asked for, in whatever year, or where none is, the longest of the uppermost line. */
export function shownDay({ axis, lines }: Drawn, asked: number | null): number {
  const { firstDay, days } = axis;
  const lastDay = firstDay + days - 1;
  if (asked === null) {
    const { sunUpH } = lines[0].year;
    return firstDay + sunUpH.indexOf(Math.max(...sunUpH));
  }
  if (asked >= firstDay && asked <= lastDay) return asked;
  return Math.min(lastDay, byYears(asked, yearsToAxis(asked, firstDay)));
}
