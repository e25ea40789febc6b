import { bestSown, type LatitudeClimates, lastLatitude, openLatitude } from '@neckfall/engine';
import type { BestOfDegree } from '@neckfall/pictures';
import { lastFew } from './last-few.ts';
import type { Work } from './protocol.ts';

export type LineAsked = {
  climates: LatitudeClimates;
  side: 1 | -1;
  warmerC: number;
  /** Starts of the year from this day on. */
  from: number;
};

/** What is known of each warmth: a line left off goes on from there. */
const lines = lastFew<Map<number, BestOfDegree>>(12);

/** From coarse to fine, degrees. */
const steps = [8, 4, 2, 1] as const;

/** The kind that does best at each degree from the equator, the coarse line first. */
export async function latitudeLine(
  { climates, side, warmerC, from }: LineAsked,
  work: Work<BestOfDegree[]>,
): Promise<BestOfDegree[]> {
  const known = lines(`${side} ${warmerC} ${from}`, () => new Map());
  const inOrder = () => [...known.values()].toSorted((a, b) => a.degree - b.degree);
  for (const step of steps) {
    for (let degree = 0; degree <= lastLatitude; degree += step) {
      if (known.has(degree)) continue;
      known.set(degree, bestOfDegree(climates, degree, side, warmerC, from));
      await work.pause();
    }
    if (step > 1) work.part(inOrder());
  }
  return inOrder();
}

function bestOfDegree(
  climates: LatitudeClimates,
  degree: number,
  side: 1 | -1,
  warmerC: number,
  from: number,
): BestOfDegree {
  const { summary, isGood } = bestSown(openLatitude(climates, side * degree, warmerC), from);
  return {
    degree,
    type: summary.plan.type,
    isGood,
    outcome: summary.outcome,
    startDay: summary.plan.startDay,
    acrossMm: summary.bulbDiameterMm?.p50 ?? null,
  };
}
