import { climateYearDays, type DayNumber, daysSinceLongest } from '../calendar/index.ts';
import { hindranceOn, workableBedC } from '../choice/index.ts';
import { startWays } from '../plant/index.ts';
import { plantOutDayOf, type Site, startedOn } from '../season/index.ts';
import { winter } from './acts.ts';
import { inClimate } from './other-weather.ts';
import type { Trial } from './season-facts.ts';
import { type CauseTrial, changed, type Otherwise } from './trials.ts';
import type { Change } from './what-if.ts';

/** Starts tried earlier and later than the plan's, days. */
const earlierBy = [14, 21, 28, 42, 56, 70, 84, 105, 126, 160] as const;
/** How readily a late start is why plants died (memory). */
const priors = { lateToWinter: 0.3 } as const;
/** So much warmer, no winter kills, °C. */
const milderC = 6;
const laterBy = [14, 28, 42, 63, 84, 112, 140, 168, 196] as const;

/** Other days to start on, and shelter for what has to stand the winter. */
export function startTrials(trial: Trial): CauseTrial[] {
  const { site, plan } = trial;
  const moved = (days: number): Otherwise[] => {
    const startDay = plan.startDay + days;
    if (hindranceOn(site, plan.start, startDay) !== null) return [];
    const out = plantOutDayOf(plan);
    const moved = startedOn(plan, startDay, out === null ? null : out + days);
    const change: Change =
      days < 0 ? { code: 'earlier', days: -days, day: startDay } : { code: 'later', days, day: startDay };
    return [{ trial: { ...trial, plan: moved }, change }];
  };
  const earlier = earlierBy
    .filter((days) => !hasWinter(site) || isSameSeason(plan.startDay, days, site.climate.latitudeDeg))
    .flatMap((days) => moved(-days));
  const later = laterBy.flatMap((days) => moved(days));
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
    ...(startWays[plan.start].comesUp === 'emergence' && !startWays[plan.start].standsInTrays
      ? [{ cause: 'cold-soil', prior: 1, told: true, without: later.slice(0, 4) } as const]
      : []),
  ];
}

/** Whether beds are ever too cold to work. */
function hasWinter(site: Site): boolean {
  return site.mean('none').soilMeanC.some((soilC) => soilC < workableBedC);
}

/** Whether no shortest day lies between a start and one so many days earlier: what is sown across it is another crop. */
function isSameSeason(startDay: DayNumber, days: number, latitudeDeg: number): boolean {
  const since = (daysSinceLongest(startDay, latitudeDeg) + climateYearDays / 2) % climateYearDays;
  return since > days || since > climateYearDays / 2;
}
