import type { SettledCourse } from '../course.ts';
import { type Due, due, within } from '../due.ts';

/** A dry bed waits this long at most (common practice, no source). */
const waitsDays = 2;
/** In fewer of the years it is told by the bed's own page alone. */
const mostly = 0.5;
/** Without anything said of the bed, watering ends so long before lifting (memory: 1–3 weeks). */
const dryBeforeLift = 10;

/** The next watering. */
export function water({ water: bed, crop: { today }, noted }: SettledCourse): Due | null {
  if (!bed) return null;
  const isDone = noted.some(
    ({ day, observation }) => day === today && observation.wateredLitres !== undefined,
  );
  if (bed.today && (bed.today.waterNow || isDone)) {
    const { depletionMm, readilyAvailableMm, litresPerM2, litresForBed, minutes } = bed.today;
    const days = { from: today, best: today, to: today + waitsDays };
    const values = {
      depletionMm: Math.round(depletionMm),
      readilyAvailableMm: Math.round(readilyAvailableMm),
      litresPerM2: Math.round(litresPerM2),
      ...(litresForBed !== null && { litresForBed: Math.round(litresForBed) }),
      ...(minutes !== null && { minutes: Math.round(minutes) }),
    };
    return due(days, 'water-now', values, { isDone });
  }
  const { days, share } = bed.next;
  // once tops begin to fall, what a few late years would ask for is no work any more
  const isOver = bed.today === null && bed.stop.days !== null && today >= bed.stop.days.p50;
  if (!days || isOver || share < mostly) return null;
  const next = { from: days.p10, best: days.p50, to: days.p90 };
  return due(next, 'water-next', { share, untilDay: days.p90 });
}

/** Tops begin to fall: water ends, at the latest when bulbs are lifted. */
export function waterStop({ water: bed, crop, lift, fall, stands }: SettledCourse): Due | null {
  if (crop.plan.water === 'rain' || !lift || !fall || !stands) return null;
  const stop = bed?.stop.days ?? null;
  const days = stop
    ? { from: stop.p10, best: stop.p50, to: stop.p90 }
    : { from: fall.p10 - dryBeforeLift, best: fall.p50 - dryBeforeLift, to: fall.p50 };
  const earlier = {
    from: Math.min(days.from, lift.from),
    best: Math.min(days.best, lift.best),
    to: Math.min(days.to, lift.to),
  };
  const inBed = within(earlier, stands.p50, lift.to);
  return inBed && due(inBed, 'water-stop', { fallDay: fall.p50 });
}
