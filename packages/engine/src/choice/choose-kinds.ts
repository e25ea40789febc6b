import type { DayNumber } from '../calendar/index.ts';
import { type Plan, planDefaults, type SeasonSummary, type Site } from '../season/index.ts';
import type { GrowingOptions } from './growing-options.ts';
import { type Kind, plantKey } from './kind.ts';
import { type Choice, rankChoices } from './rank.ts';
import { type MeanTrial, type StartScan, scanStarts } from './start-scan.ts';

/** A kind as the mean climate sees it. */
export type CoarseChoice = { kind: Kind; trial: MeanTrial };

/** How far a choice has come; `coarse` once, after the first look: all kinds, best first. */
export type ChooseProgress = { done: number; total: number; coarse: readonly CoarseChoice[] | null };

/** A kind with the season of its best start, and that of the usual plant of its type started the same way. */
export type GrownKind = { kind: Kind; summary: SeasonSummary; usual: SeasonSummary };

/**
 * Ranks kinds of onion at their best starts of the year, each the next to come from `firstDay` on.
 *
 * @param onProgress told after each plant tried; when it answers false, the work is given up and null returned
 */
export function chooseKinds(
  site: Site,
  kinds: readonly Kind[],
  firstDay: DayNumber,
  options: GrowingOptions = {},
  onProgress: (progress: ChooseProgress) => boolean | undefined = () => true,
): Choice[] | null {
  const steps = growKinds(site, kinds, firstDay, options);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return rankChoices(site, step.value);
    if (onProgress(step.value) === false) return null;
  }
}

/**
 * The same work in steps of some milliseconds, so that a worker can listen between them, without the ranking:
 * parts of the kinds may be grown apart and ranked together ({@link rankChoices}).
 */
export function* growKinds(
  site: Site,
  kinds: readonly Kind[],
  firstDay: DayNumber,
  options: GrowingOptions = {},
): Generator<ChooseProgress, GrownKind[], void> {
  // kinds that only keep differently grow alike
  const plants = new Map<string, { kinds: Kind[]; scan: StartScan }>();
  const plantOf = (kind: Kind) => {
    const key = plantKey(kind);
    let plant = plants.get(key);
    if (!plant) {
      plant = { kinds: [], scan: scanStarts(site, planOf(kind, firstDay, options), firstDay) };
      plants.set(key, plant);
    }
    return plant;
  };
  for (const kind of kinds) {
    plantOf({ ...kind, traits: null });
    plantOf(kind).kinds.push(kind);
  }
  const order = [...plants.values()].sort((a, b) => b.scan.coarse.worth - a.scan.coarse.worth);
  const coarse = order.flatMap(({ kinds, scan }) => kinds.map((kind) => ({ kind, trial: scan.coarse })));
  yield { done: 0, total: order.length, coarse };
  const seasons = new Map<StartScan, SeasonSummary>();
  for (const { scan } of order) {
    seasons.set(scan, scan.best().summary);
    yield { done: seasons.size, total: order.length, coarse: null };
  }
  const seasonOf = (kind: Kind) => seasons.get(plantOf(kind).scan) as SeasonSummary;
  return kinds.map((kind) => ({
    kind,
    summary: seasonOf(kind),
    usual: seasonOf({ ...kind, traits: null }),
  }));
}

function planOf({ type, traits, start }: Kind, firstDay: DayNumber, options: GrowingOptions): Plan {
  return { ...planDefaults, ...options, type, traits, start, startDay: firstDay, plantOutDay: null };
}
