import type { DayNumber, SeasonSummary } from '@neckfall/engine';
import type { NumberedJob } from './work-of.ts';

const stretchNames = ['start', 'leaves', 'bulbs', 'harvest'] as const;

/** A stretch of a crop's life with the work that begins in it. */
export type Stretch = { name: (typeof stretchNames)[number]; work: NumberedJob[] };

/** Work by the stretch of its crop's life in which it is best done; stretches without any are left out. */
export function stretchesOf(work: readonly NumberedJob[], summary: SeasonSummary): Stretch[] {
  const { plan, plantOut, emergence, onset, neckFall } = summary;
  const stands = plantOut ? plantOut.days : plan.start === 'direct-seed' ? emergence.days : null;
  const never = Number.POSITIVE_INFINITY;
  const ends: DayNumber[] = [
    stands?.p50 ?? plan.startDay,
    onset.days?.p50 ?? neckFall.days?.p50 ?? never,
    neckFall.days?.p50 ?? never,
  ];
  return stretchNames
    .map((name, at) => ({
      name,
      work: work.filter(({ job: { best } }) => ends.filter((end) => best > end).length === at),
    }))
    .filter((stretch) => stretch.work.length > 0);
}
