import { climateYearDays, type DayNumber, daysSinceLongest } from '../calendar/index.ts';
import { hindranceOn, workableBedC } from '../choice/index.ts';
import { type StartMethod, startWays } from '../plant/index.ts';
import { plantOutDayOf, type Site, startedOn } from '../season/index.ts';
import { winter } from './acts.ts';
import { inClimate } from './other-weather.ts';
import { type CauseTrial, changed, type Otherwise, type Saying } from './trials.ts';
import type { Change } from './what-if.ts';

/** Starts tried earlier and later than the plan's, days. */
const earlierBy = [14, 21, 28, 42, 56, 70, 84, 105] as const;
/** How readily a late start is why plants died (memory). */
const priors = { lateToWinter: 0.3 } as const;
/** So much warmer, no winter kills, °C. */
const milderC = 6;
const laterBy = [14, 28, 42, 63, 84, 112, 140, 168, 196] as const;

/** Other days to start on, and shelter for what has to stand the winter. */
export function startTrials({ trial, said }: Saying): CauseTrial[] {
  const { site, plan } = trial;
  const moved = (days: number): Otherwise => {
    const startDay = plan.startDay + days;
    const out = plantOutDayOf(plan);
    const moved = startedOn(plan, startDay, out === null ? null : out + days);
    const change: Change =
      days < 0 ? { code: 'earlier', days: -days, day: startDay } : { code: 'later', days, day: startDay };
    return { trial: { ...trial, plan: moved }, change };
  };
  const advised = (days: number): Otherwise[] =>
    hindranceOn(site, plan.start, plan.startDay + days) === null ? [moved(days)] : [];
  const earlier = earlierBy
    .filter((days) => !hasWinter(site) || isSameSeason(plan.startDay, days, site.climate.latitudeDeg))
    .flatMap((days) => advised(-days));
  const later = laterBy.flatMap(advised);
  const covered: Otherwise[] = (['fleece', 'tunnel'] as const)
    .filter(() => plan.cover === 'none')
    .map((cover) => ({ trial: changed(trial, { cover }), change: { code: 'covered', cover } }));
  const milder: Otherwise = {
    trial: inClimate(trial, milderC),
    change: { code: 'other-weather', byC: milderC },
  };
  return [
    { cause: 'started-too-late', prior: 1, told: true, without: earlier },
    // small plants die where large ones would have lived
    { cause: 'started-too-late', prior: priors.lateToWinter, acts: winter, told: true, without: earlier },
    // sets are settled by their store
    ...(plan.start === 'sets'
      ? []
      : [{ cause: 'cold-on-large-plants', prior: 1, told: true, without: later } as const]),
    { cause: 'winter-cold', prior: 1, told: true, without: [...covered, ...later, milder] },
    ...(said.has('startDay') ? [] : unsaidDay(moved, plan.start)),
    ...(startWays[plan.start].comesUp === 'emergence' && !startWays[plan.start].standsInTrays
      ? [{ cause: 'cold-soil', prior: 1, told: true, without: later.slice(0, 4) } as const]
      : []),
  ];
}

/** A day that nobody said may have been as much earlier or later, days, and was so often (memory). */
const unsaid = { late: [42, 70, 98], tooLate: 0.25, early: [-42, -70], tooEarly: 0.15 } as const;

function unsaidDay(moved: (days: number) => Otherwise, start: StartMethod): CauseTrial[] {
  const on = (days: readonly number[]) => days.map((by) => moved(by).trial);
  const usual: Change = { code: 'usual-day' };
  return [
    { cause: 'started-too-late', prior: unsaid.tooLate, told: false, within: on(unsaid.late), change: usual },
    ...(start === 'sets'
      ? []
      : [
          {
            cause: 'cold-on-large-plants',
            prior: unsaid.tooEarly,
            told: false,
            within: on(unsaid.early),
            change: usual,
          } as const,
        ]),
  ];
}

/** Whether beds are ever too cold to work. */
function hasWinter(site: Site): boolean {
  return site.mean('none').soilMeanC.some((soilC) => soilC < workableBedC);
}

/** Whether no shortest day lies between a start and one so many days earlier: what is sown across it is another crop. */
function isSameSeason(startDay: DayNumber, days: number, latitudeDeg: number): boolean {
  const since = (daysSinceLongest(startDay, latitudeDeg) + climateYearDays / 2) % climateYearDays;
  return since > days;
}
