import { type DayNumber, daysSinceLongest } from '../calendar/index.ts';
import { type Site, startedOn, summarise } from '../season/index.ts';
import { type Entrant, entrantsOf, tryOver } from './entrant.ts';
import type { GrowingOptions } from './growing-options.ts';
import { once } from './once.ts';
import type { BestStart } from './start-scan.ts';
import { tellingYears } from './telling-years.ts';
import type { Way } from './ways.ts';
import { commonYearStart, weeksAhead } from './week-starts.ts';

/** The starts of a year a fortnight apart, followed up over the weather years as long as each may still be the best. */
export type FortnightRace = {
  /** Whether nothing is left to try. */
  isOver: () => boolean;
  /** Tries the starts still in it over some more years. */
  goOn: () => void;
  /** About the most that the best start may turn out to be worth; once the race is over, what it is worth. */
  hope: () => number;
  /** The best start; the race is run to its end for it. */
  best: () => BestStart;
};

/**
 * After so many years a start is dropped unless it would come up to the best so far by a better chance (by at most so
 * much, and to no more than every season) and by all else: size, time, flower and drying, which a few years tell well.
 * Rules of thumb, held to every start over every year on places of the whole world (docs/atlas.md).
 */
const heats = [
  { years: 1, chance: 1, rest: 0.2 },
  { years: 2, chance: 0.6, rest: 0.1 },
  { years: 3, chance: 0.4, rest: 0.1 },
  { years: 5, chance: 0.2, rest: 0.05 },
] as const;

/** Days after the longest day of starts that all race, as few weeks part winters that kill from such that bring flower (our choice). */
const closeFrom = 35;
const closeUntil = 120;

/** Where no start has ended well by then, the best of these years is taken as it is: none is good. */
const hopelessAfter = 3;

/**
 * Races the 26 fortnight starts from a day on, ranked as by `scanStarts`: by what they are worth in one common year.
 * What is left out at no risk: where no day is as long as a class needs, whatever the draw, it forms no bulb, and one
 * start stands for all; starts that something hinders are tried only where they could still beat the best of the others.
 *
 * @param ways one onion started one way, as it is used through the year; on each fortnight one of them is usual
 */
export function fortnightRace(
  site: Site,
  ways: readonly Way[],
  from: DayNumber,
  options: GrowingOptions = {},
): FortnightRace {
  const weeks = weeksAhead(from);
  const entrants = entrantsOf(site, ways, site.isDated ? weeks : weeksAhead(commonYearStart), options);
  const order = tellingYears(site);
  const rounds = [
    ...heats.filter(({ years }) => years < site.years),
    { years: site.years, chance: 0, rest: 0 },
  ];
  const canBulb = entrants.some((entrant) => entrant.kind.canBulb);

  const racing = everySecond(entrants, site.climate.latitudeDeg);
  let live = canBulb
    ? racing.filter(({ isHindered }) => !isHindered)
    : [bestOf(entrants, ({ hope }) => hope)];
  let waiting = canBulb ? racing.filter(({ isHindered }) => isHindered) : [];
  let round = canBulb ? 0 : rounds.length - 1;
  let winner: Entrant | null = null;
  let hope = 0;
  letIn();

  /** Lets the hindered ones in when the others are done, and sees what may still come of all. */
  function letIn(): void {
    const floor = winner?.worth ?? Number.NEGATIVE_INFINITY;
    if (live.length === 0) {
      live = waiting.filter((entrant) => entrant.hope > floor);
      waiting = [];
      round = 0;
    }
    hope = floor;
    for (const entrant of live) hope = Math.max(hope, entrant.hope);
    for (const entrant of waiting) hope = Math.max(hope, entrant.hope);
  }

  function finish(entrant: Entrant): void {
    if (winner === null || entrant.worth > winner.worth) winner = entrant;
    live = [];
  }

  /** The best of a start and those next to it, and of those next to that, and so on. */
  function bestAbout(entrant: Entrant): Entrant {
    const at = entrants.indexOf(entrant);
    const near = [entrants.at(at - 1), entrants[(at + 1) % entrants.length]].filter(
      (one): one is Entrant => one?.isHindered === entrant.isHindered,
    );
    for (const one of near) tryOver(site, one, order, site.years);
    const best = bestOf([entrant, ...near], ({ worth }) => worth);
    return best === entrant ? entrant : bestAbout(best);
  }

  function goOn(): void {
    const heat = rounds[round++];
    for (const entrant of live) tryOver(site, entrant, order, heat.years);
    const isHopeless = heat.years === hopelessAfter && live.every(({ tally }) => tally.good === 0);
    const first = bestOf(live, ({ worth }) => worth);
    if (isHopeless) {
      tryOver(site, first, order, site.years);
      finish(first);
    } else if (heat.years === site.years) finish(canBulb ? bestAbout(first) : first);
    else {
      const floor = Math.max(winner?.worth ?? Number.NEGATIVE_INFINITY, first.worth);
      for (const entrant of live) {
        const { chance } = entrant.parts;
        entrant.hope = entrant.worth - chance + Math.min(1, chance + heat.chance) + heat.rest;
      }
      live = live.filter(({ hope }) => hope >= floor);
    }
    letIn();
  }

  return {
    isOver: () => live.length === 0,
    goOn,
    hope: () => hope,
    best: once(() => {
      while (live.length > 0) goOn();
      const { week, plan, kind, worth } = winner as Entrant;
      const startDay = weeks[week];
      kind.runner.moveTo(startDay, null);
      return { summary: summarise(site, startedOn(plan, startDay), kind.runner), worth };
    }),
  };
}

function bestOf(entrants: readonly Entrant[], by: (entrant: Entrant) => number): Entrant {
  return entrants.reduce((a, b) => (by(b) > by(a) ? b : a));
}

/**
 * Of starts that follow each other and are alike in what they hold and what hinders them, the first, the third, …;
 * and all from which a crop may just get through the winter, neither flowering nor freezing: those good lie close together.
 */
function everySecond(entrants: readonly Entrant[], latitudeDeg: number): Entrant[] {
  let place = 0;
  return entrants.filter((entrant, at) => {
    const before = entrants[at - 1];
    const isLike =
      before?.kind === entrant.kind &&
      before.isHindered === entrant.isHindered &&
      before.hope === entrant.hope;
    place = isLike ? place + 1 : 0;
    const since = daysSinceLongest(entrant.plan.startDay, latitudeDeg);
    return place % 2 === 0 || (since >= closeFrom && since < closeUntil);
  });
}
