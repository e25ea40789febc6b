import type { DayNumber } from '../calendar/index.ts';
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

/** Where no start has ended well by then, the best of these years is taken: none is good. */
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

  let live = canBulb
    ? entrants.filter(({ isHindered }) => !isHindered)
    : [bestOf(entrants, ({ hope }) => hope)];
  let waiting = canBulb ? entrants.filter(({ isHindered }) => isHindered) : [];
  let round = canBulb ? 0 : rounds.length - 1;
  let winner: Entrant | null = null;
  letIn();

  /** Lets the hindered ones in when the others are done. */
  function letIn(): void {
    if (live.length > 0) return;
    const floor = winner?.worth ?? Number.NEGATIVE_INFINITY;
    live = waiting.filter(({ hope }) => hope > floor);
    waiting = [];
    round = 0;
  }

  function finish(entrant: Entrant): void {
    tryOver(site, entrant, order, site.years);
    if (winner === null || entrant.worth > winner.worth) winner = entrant;
    live = [];
  }

  function goOn(): void {
    const heat = rounds[round++];
    for (const entrant of live) tryOver(site, entrant, order, heat.years);
    const isHopeless = heat.years === hopelessAfter && live.every(({ tally }) => tally.good === 0);
    if (heat.years === site.years || isHopeless) finish(bestOf(live, ({ worth }) => worth));
    else {
      const floor = Math.max(winner?.worth ?? Number.NEGATIVE_INFINITY, ...live.map(({ worth }) => worth));
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
    hope: () =>
      Math.max(
        winner?.worth ?? -Infinity,
        ...live.map(({ hope }) => hope),
        ...waiting.map(({ hope }) => hope),
      ),
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
