import { enoughth, feed, leastLast } from './feed-lot.ts';
import type { LotTable } from './kitchen-periods.ts';

/** Which areas of which lots feed a kitchen; lots in the order in which they are eaten. */
export type AreaQuestion = {
  lots: readonly LotTable[];
  years: number;
  periods: number;
  /** Periods that must be fed, 1 each; in the others what there is is eaten too. */
  required: Uint8Array;
  /** Years in which they must be. */
  enoughYears: number;
  stepM2: number;
  /** Wants that must be answered, a bit each. */
  likes: number;
  mostLots: number;
  /** A bed of so many steps is told finely enough: steps of twice, four or eight times the size are tried before. */
  fineSteps: number;
};

/** An area one part in a thousand million over a step is that step. */
const hair = 1e-9;
/** More than any bed. */
const enormousM2 = 1e12;

/** Coarser grids are searched first, each so many times the step of the next: what they find lets the next give up sooner. */
const coarser = [8, 4, 2, 1];

type Found = { areas: Int32Array; steps: number; lots: number };

/**
 * The least area in whole steps, or in coarser ones where a bed is of many, by lot; of equal ones that of fewest lots. Null where no so few lots feed the
 * kitchen. Exact: branch and bound over the areas of all lots but the last, whose least area follows from what the
 * others leave.
 *
 * Feeding is monotone: more of a lot meets all it met before, and a later lot meets only what earlier ones leave, so
 * that it is spared where they give more. More of any lot never starves the kitchen.
 */
export function leastAreas(asked: AreaQuestion): Int32Array | null {
  const question = hardestFirst(asked);
  const { lots, years, periods, mostLots } = question;
  const size = years * periods;
  // what each choice so far leaves of the need, 0…1 of a period
  const rest = Array.from({ length: mostLots }, () => new Float64Array(size));
  rest[0].fill(1);
  const cheapest = cheapestFrom(lots, size);
  let found: Found | null = null;
  for (const times of coarser) {
    if (found) found = { ...found, areas: found.areas.map((steps) => 2 * steps), steps: 2 * found.steps };
    found = search(
      {
        ...question,
        stepM2: times * question.stepM2,
        lots: lots.map((lot) => ({ ...lot, likeSteps: Math.ceil(lot.likeSteps / times) })),
      },
      rest,
      cheapest,
      found,
    );
    // what no grid feeds no finer one does
    if (!found) return null;
    if (found.steps >= question.fineSteps) return found.areas.map((steps) => times * steps);
  }
  return found?.areas ?? null;
}

function search(
  { lots, years, periods, required, enoughYears, stepM2, likes, mostLots }: AreaQuestion,
  rest: readonly Float64Array[],
  cheapest: readonly Float64Array[],
  known: Found | null,
): Found | null {
  const slack = years - enoughYears;
  const largest = new Float64Array(slack + 1);
  const chosen = new Int32Array(lots.length);
  let best = known;
  /** No choice among the lots from one on takes less than this, m²: each kg comes from the lot that gives it on least bed. */
  const bound = (from: number, left: Float64Array, mostM2: number): number => {
    const m2 = cheapest[from];
    largest.fill(0);
    for (let year = 0; year < years && largest[slack] <= mostM2; year++) {
      let sum = 0;
      for (let at = 0; at < periods; at++) {
        const need = left[year * periods + at];
        if (need > 0 && required[at]) sum += need * m2[year * periods + at];
      }
      enoughth(largest, sum);
    }
    return largest[slack];
  };
  const isBetter = (steps: number, count: number) =>
    best === null || steps < best.steps || (steps === best.steps && count < best.lots);
  const wholeSteps = (m2: number) => Math.max(1, Math.ceil(m2 / stepM2 - hair));
  const choose = (from: number, depth: number, steps: number, answered: number): void => {
    const left = rest[depth];
    const unanswered = likes & ~answered;
    const isLast = depth + 1 === mostLots;
    for (let at = from; at < lots.length; at++) {
      const lot = lots[at];
      const answersAll = (unanswered & ~lot.likes) === 0;
      if (isLast && !answersAll) continue;
      const mostM2 = best === null ? enormousM2 : (best.steps - steps + 1) * stepM2;
      const least = bound(at, left, mostM2);
      if (least > mostM2 || !isBetter(steps + wholeSteps(least), depth + 1)) return;
      const alone = wholeSteps(leastLast(lot, left, { years, periods, required }, largest, mostM2));
      const asLast = unanswered === 0 ? alone : Math.max(alone, lot.likeSteps);
      if (answersAll && asLast < Number.POSITIVE_INFINITY && isBetter(steps + asLast, depth + 1)) {
        const areas = chosen.slice();
        areas[at] = asLast;
        best = { areas, steps: steps + asLast, lots: depth + 1 };
      }
      if (isLast || at + 1 === lots.length) continue;
      // beyond this it feeds no more, and answers no more wants
      const most = unanswered === 0 ? alone - 1 : Math.max(alone, lot.likeSteps);
      for (let more = 1; more <= most && isBetter(steps + more + 1, depth + 2); more++) {
        const isSpent = feed(lot, more * stepM2, left, rest[depth + 1], years, periods);
        chosen[at] = more;
        choose(at + 1, depth + 1, steps + more, more >= lot.likeSteps ? answered | lot.likes : answered);
        if (!isSpent && more >= lot.likeSteps) break;
      }
      chosen[at] = 0;
    }
  };
  choose(0, 0, 0, 0);
  return best;
}

/** The same with the years in which most bed is needed first: they tell soonest that a choice is too little. */
function hardestFirst(question: AreaQuestion): AreaQuestion {
  const { lots, years, periods, required } = question;
  if (lots.length === 0) return question;
  const [cheapest] = cheapestFrom(lots, years * periods);
  const takes = Array.from({ length: years }, (_, year) =>
    required.reduce(
      (sum, must, at) => (must ? sum + Math.min(enormousM2, cheapest[year * periods + at]) : sum),
      0,
    ),
  );
  const order = takes.map((_, year) => year).sort((a, b) => takes[b] - takes[a]);
  return {
    ...question,
    lots: lots.map((lot) => {
      const m2 = new Float64Array(years * periods);
      for (const [to, year] of order.entries())
        m2.set(lot.m2.subarray(year * periods, (year + 1) * periods), to * periods);
      return { ...lot, m2, from: Int16Array.from(order, (year) => lot.from[year]) };
    }),
  };
}

/** The bed a period takes of the cheapest of the lots from one on, m². */
function cheapestFrom(lots: readonly LotTable[], size: number): Float64Array[] {
  const cheapest: Float64Array[] = [];
  let after: Float64Array = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  for (let at = lots.length - 1; at >= 0; at--) {
    const own = lots[at].m2;
    after = after.map((m2, i) => Math.min(m2, own[i]));
    cheapest[at] = after;
  }
  return cheapest;
}
