import { type DayNumber, parseDay, type SeasonDay } from '../calendar/index.ts';
import type { Observation } from '../garden/index.ts';

/** An observation as learning reads it: means over the plants looked at, from the start of the plan. */
export type Sighting = {
  /** Day that the plants are seen as of: that of the lifting for what was weighed later. */
  at: SeasonDay;
  /** Plants looked at, 1 or more. */
  plants: number;
  leavesGreen: number | null;
  neckMm: number | null;
  bulbMm: number | null;
  /** Share of tops over, and of how many plants. */
  topsOver: { share: number; of: number } | null;
  /** Share of the stand in flower, and of how many plants. */
  flowering: { share: number; of: number } | null;
  /** Mean of the bulbs weighed, and how many they were. */
  weighed: { meanG: number; bulbs: number } | null;
};

export type Sightings = {
  seen: Sighting[];
  /** Day on which the crop was lifted; null: it stands. */
  liftedOn: SeasonDay | null;
  /** Observations of after the day asked about. */
  later: number;
};

/** What of a planting's observations tells of its plants up to a day, in the order of their days. */
export function sightingsOf(
  observations: readonly Observation[],
  startDay: DayNumber,
  asOf: DayNumber,
): Sightings {
  const dated = observations
    .map((observation) => ({ observation, day: parseDay(observation.date) ?? Number.NaN }))
    .sort((a, b) => a.day - b.day);
  const known = dated.filter(({ day }) => day >= startDay && day <= asOf);
  const lifting = known.find(({ observation }) => observation.lifted);
  const liftedOn = lifting ? lifting.day - startDay : null;
  let stand: number | null = null;
  const seen: Sighting[] = [];
  for (const { observation, day } of known) {
    stand = observation.standCount || stand;
    const sighting = sightingOf(observation, day - startDay, stand);
    // a lifted crop has no leaves to count, but can be weighed: it has what it had on that day
    const hasStood = liftedOn === null || sighting.at <= liftedOn;
    const told = hasStood ? sighting : { ...nothingSeen, at: liftedOn, weighed: sighting.weighed };
    if (tells(told)) seen.push(told);
  }
  return { seen, liftedOn, later: dated.filter(({ day }) => day > asOf).length };
}

/** A share of tops judged by eye is worth about so many that were counted; a share of fewer is one by eye too. */
const topsByEye = 20;
const fewestTops = 5;

const nothingSeen = {
  plants: 1,
  leavesGreen: null,
  neckMm: null,
  bulbMm: null,
  topsOver: null,
  flowering: null,
  weighed: null,
};

function sightingOf(observation: Observation, at: SeasonDay, stand: number | null): Sighting {
  const { leavesGreen, neckMm, bulbMm, topsOverShare, floweringCount, weighedKg, bulbCount } = observation;
  const plants = observation.lookedAt ?? 1;
  const of = stand ?? observation.lookedAt;
  return {
    at,
    plants,
    leavesGreen: leavesGreen ?? null,
    neckMm: neckMm || null,
    bulbMm: bulbMm || null,
    topsOver:
      topsOverShare === undefined
        ? null
        : { share: topsOverShare, of: Math.max(fewestTops, observation.lookedAt ?? topsByEye) },
    flowering: floweringCount !== undefined && of ? { share: Math.min(1, floweringCount / of), of } : null,
    weighed: weighedKg && bulbCount ? { meanG: (1000 * weighedKg) / bulbCount, bulbs: bulbCount } : null,
  };
}

function tells({ leavesGreen, bulbMm, topsOver, flowering, weighed }: Sighting): boolean {
  return [leavesGreen, bulbMm, topsOver, flowering, weighed].some((value) => value !== null);
}
