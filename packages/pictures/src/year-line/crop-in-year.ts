import type { DayNumber } from '@neckfall/engine';
import { byYears } from './common-axis.ts';
import type { CropLine } from './year-line-props.ts';

/** A crop as it stands so many years later: its days on the calendar, and so its words, stay. */
export function cropInYear(crop: CropLine, years: number): CropLine {
  if (years === 0) return crop;
  const moved = <Thing extends { day: DayNumber }>(thing: Thing): Thing => ({
    ...thing,
    day: byYears(thing.day, years),
  });
  return {
    leaves: crop.leaves.map(moved),
    leavesText: crop.leavesText && moved(crop.leavesText),
    bulb: crop.bulb.map(moved),
    topsOver: crop.topsOver === null ? null : byYears(crop.topsOver, years),
    counted: crop.counted.map(moved),
    marks: crop.marks.map((mark) => ({
      ...moved(mark),
      span: mark.span && { from: byYears(mark.span.from, years), to: byYears(mark.span.to, years) },
    })),
    work: crop.work.map(moved),
  };
}
