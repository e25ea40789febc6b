import type { Course } from '../course.ts';
import { type Due, due } from '../due.ts';

/** A feed may go on some days before its leaves stand and some after (common practice, no source). */
const aroundFeed = { before: 4, after: 10 } as const;
/** Ground is fed in the last two weeks before it is sown or planted (common practice, no source). */
const beforeStart = 14;
/** What was given so near a feed's days was that feed. */
const sameFeedDays = 14;

/** The day from which nitrogen only harms: bulbs start. */
function stopDay({ feed, onset }: Course): number | null {
  if (!onset) return null;
  return Math.min(feed?.stopBy ?? onset.p50, onset.p50);
}

export function feeds(course: Course): Due[] {
  const { feed, stands, noted, onset } = course;
  if (!stands || !feed) return [];
  const stop = stopDay(course);
  const bedDay = course.crop.plan.start === 'direct-seed' ? course.start : stands.p50;
  const given = noted.filter(({ observation }) => observation.fedG !== undefined).map(({ day }) => day);
  // what was fed earlier covers later feeds; with none noted, a feed of nothing is none
  const wasFed = given.length > 0;
  const told: Due[] = [];
  for (const { number, stage, day, gramsPerM2, nGPerM2, gramsForBed } of feed.feeds) {
    const isFirst = stage === 'before-start';
    const days = isFirst
      ? { from: bedDay - beforeStart, best: Math.min(day, bedDay), to: bedDay }
      : {
          from: Math.max(stands.p50, day - aroundFeed.before),
          best: Math.max(stands.p50, day),
          to: day + aroundFeed.after,
        };
    if (!isFirst && stop !== null) {
      if (days.best >= stop) continue;
      days.to = Math.min(days.to, stop - 1);
    }
    const isNothing = Math.round(gramsPerM2) === 0;
    if (isNothing && !wasFed) continue;
    const matching = given.findIndex((on) => on >= days.from - sameFeedDays && on <= days.to + sameFeedDays);
    if (matching >= 0) given.splice(matching, 1);
    const values = {
      gramsPerM2: Math.round(gramsPerM2),
      nGPerM2,
      product: feed.product,
      ...(gramsForBed !== null && { gramsForBed: Math.round(gramsForBed) }),
      ...(!isFirst && { leaves: Number(stage.slice('leaves-'.length)) }),
      ...(onset && { onsetDay: onset.p50 }),
    };
    const code = `feed${isFirst ? '-ground' : ''}${onset ? '' : '-leaves'}`;
    told.push(due(days, code, values, { number, isDone: isNothing || matching >= 0 }));
  }
  return told;
}

export function feedStop(course: Course): Due | null {
  const { onset, stands } = course;
  const stop = stopDay(course);
  if (stop === null || !onset || !stands) return null;
  const from = Math.max(stop - 7, Math.min(stands.p50, stop));
  return due({ from, best: stop, to: onset.p50 }, 'feed-stop', { onsetDay: onset.p50 });
}
