import {
  dayNumber,
  type GrownKind,
  type Kind,
  planDefaults,
  runnerOf,
  type SeasonSummary,
  type Site,
  summarise,
  worth,
} from '../../packages/engine/src/index.ts';

/** What counts as as good as the best, said again here so that the search is not checked against its own figure. */
export const asGoodWithin = 0.04;

/** Every start of a year, `step` days apart, on every weather year: the plain way to find the best. */
export function bestOfAll(site: Site, kind: Kind, firstDay: number, step: number): SeasonSummary {
  const plan = { ...planDefaults, type: kind.type, traits: kind.traits, start: kind.start };
  const runner = runnerOf(site, { ...plan, startDay: firstDay, plantOutDay: null });
  const count = Math.floor(365 / step);
  const summaries = Array.from({ length: count }, (_, at) => {
    const startDay = firstDay + step * at;
    runner.moveTo(startDay, null);
    return summarise(site, { ...plan, startDay, plantOutDay: null }, runner);
  });
  const worths = summaries.map((summary) => worth(site, summary));
  const best = worths.indexOf(Math.max(...worths));
  const isAsGood = (at: number) => worths[((at % count) + count) % count] >= worths[best] - asGoodWithin;
  // a stretch is not ended by a single week that falls short
  const reach = Math.round(14 / step);
  const next = (at: number, way: 1 | -1) => {
    for (let far = reach; far > 0; far--) if (isAsGood(at + way * far)) return far;
    return 0;
  };
  let first = best;
  while (best - first < count / 4 && next(first, -1) > 0) first -= next(first, -1);
  let last = best;
  while (last - best < count / 4 && next(last, 1) > 0) last += next(last, 1);
  if (best - first >= count / 4 && last - best >= count / 4) return summaries[best];
  return summaries[(Math.round((first + last) / 2) + count) % count];
}

export function bruteForce(site: Site, kinds: readonly Kind[], firstDay: number, step: number): GrownKind[] {
  return kinds.map((kind) => {
    const summary = bestOfAll(site, kind, firstDay, step);
    return { kind, summary, usual: summary };
  });
}

/** A week start. */
export const firstDay = dayNumber(2027, 2, 5);
