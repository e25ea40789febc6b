import type { DayNumber } from '../calendar/index.ts';
import type { Observation } from '../garden/index.ts';
import { quantileSorted, randomSource, shuffled, standardDeviation } from '../math/index.ts';
import { type Draw, dayTrace, longestSeason, type Plan, runnerOf, type Site } from '../season/index.ts';
import { beliefAfter, beliefSite } from './belief.ts';
import { logLikelihood, type Told } from './likelihood.ts';
import {
  type Belief,
  drawOf,
  type Estimate,
  type LearntParameter,
  learntParameters,
  ofEach,
  seasonEstimate,
  usualBelief,
  usualLasting,
} from './parameters.ts';
import { roundSize, weighPopulation } from './population.ts';
import { type LearntShift, shiftsOf } from './shifts.ts';
import { type Sighting, sightingsOf } from './sightings.ts';
import { type Standing, standingGatherer } from './standing.ts';
import { spreadOverWeather } from './weather-share.ts';
import { resampled } from './weights.ts';

/** A season as told by what was seen of it; plain data, so that it goes from a worker to a page as it is. */
export type LearntSeason = {
  asOf: DayNumber;
  /** A draw and a weather year for each season; null where nothing was seen, and the site's own hold. */
  seasons: { draws: Draw[]; weatherYears: number[]; middleDraw: Draw } | null;
  /** Of as many equal draws as are these worth (Kish); the number of seasons where nothing was seen. */
  effectiveDraws: number;
  /** Observations that told something, and those of after the day asked about, which were left out. */
  observations: number;
  later: number;
  /** Day on which the crop was lifted; null: it stands. */
  liftedOn: DayNumber | null;
  learnt: LearntShift[];
  /** Null where no leaves were counted. */
  standing: Standing | null;
  /** What is thought of this onion here from now on; null where nothing has told of it, in this season or before. */
  belief: Belief | null;
};

/**
 * Learns from what was seen of a planting up to a day: draws of the plants' parameters, each in a weather year with
 * the weather that came laid in (the site's record), weighed by how well they fit, become equally likely seasons.
 *
 * @param asOf observations of later days are left out
 * @param believed what an earlier season told of this onion here
 */
export function learnSeason(
  site: Site,
  plan: Plan,
  observations: readonly Observation[],
  asOf: DayNumber,
  believed: Belief | null = null,
): LearntSeason {
  const { seen, liftedOn, later } = sightingsOf(observations, plan.startDay, asOf);
  const told = {
    asOf,
    observations: seen.length,
    later,
    liftedOn: liftedOn === null ? null : plan.startDay + liftedOn,
  };
  if (seen.length === 0)
    return {
      ...told,
      seasons: null,
      effectiveDraws: site.years,
      learnt: [],
      standing: null,
      belief: believed,
    };
  const belief = believed ?? usualBelief();
  const { found, ...learnt } = weighed(site, plan, seen, belief);
  const seasons = { ...learnt.seasons, middleDraw: middleOf(found, belief) };
  return {
    ...told,
    seasons,
    effectiveDraws: learnt.effectiveDraws,
    learnt: shiftsOf(withSeasons(site, seasons), plan, found),
    standing: learnt.standing,
    belief: beliefAfter(belief, found),
  };
}

/** The site of what was learnt: seasons of it answer whatever a site can be asked. */
export function learntSite(site: Site, { seasons }: LearntSeason, believed: Belief | null = null): Site {
  if (seasons) return withSeasons(site, seasons);
  return believed ? beliefSite(site, believed) : site;
}

function withSeasons(
  site: Site,
  { draws, weatherYears, middleDraw }: NonNullable<LearntSeason['seasons']>,
): Site {
  return {
    ...site,
    years: draws.length,
    weatherYear: (season) => site.weatherYear(weatherYears[season]),
    draws: () => draws,
    middleDraw,
  };
}

/** Bulbs that were measured tell of growth; until then the model's size stands. */
function toldParameters(seen: readonly Sighting[], belief: Belief): LearntParameter[] {
  const sized = seen.some(({ bulbMm, weighed }) => bulbMm !== null || weighed !== null);
  return learntParameters.filter((of) => of !== 'growth' || sized || belief.growth !== null);
}

function weighed(site: Site, plan: Plan, seen: readonly Sighting[], belief: Belief) {
  const parameters = toldParameters(seen, belief);
  const before = {
    ...belief,
    growth: belief.growth ?? (parameters.includes('growth') ? usualLasting('growth') : null),
  };
  const estimates = ofEach((of) => seasonEstimate(before, of));
  const valuesAt = (z: Float64Array): Values =>
    ofEach((of) => estimates[of].mean + estimates[of].sd * (z[learntParameters.indexOf(of)] ?? 0));
  const drawAt = (z: Float64Array) => drawOf(valuesAt(z));
  const random = randomSource(site.seed * seedFactor + 3);
  const trial: { draw: Draw; weatherYear: number } = { draw: drawAt(new Float64Array(0)), weatherYear: 0 };
  const runner = runnerOf(
    { ...site, weatherYear: () => site.weatherYear(trial.weatherYear), draws: () => [trial.draw] },
    plan,
  );
  const trace = dayTrace(longestSeason + 1);
  const { dryMatterShare } = runner.crop.type;
  const gatherer = standingGatherer(seen, roundSize);
  const { members, weights, effective } = weighPopulation(
    parameters.length,
    site.years,
    random,
    (z, weatherYear, isFirst) => {
      trial.draw = drawAt(z);
      trial.weatherYear = weatherYear;
      trace.length = 0;
      const told: Told = { trace, outcome: runner.quickSeason(0, trace), dryMatterShare };
      if (isFirst) gatherer?.add(told);
      return logLikelihood(seen, told);
    },
  );
  const drawn = resampled(spreadOverWeather(members, weights, site.years), roundSize, random);
  // a first look tries the first seasons: none of them may be of one kind
  const kept = shuffled(roundSize, random).map((at) => drawn[at]);
  return {
    effectiveDraws: Math.min(roundSize, effective),
    seasons: {
      draws: kept.map((at) => drawAt(members[at].z)),
      weatherYears: kept.map((at) => members[at].weatherYear),
    },
    found: foundIn(
      kept.map((at) => valuesAt(members[at].z)),
      parameters,
    ),
    standing: gatherer?.standing(plan.startDay) ?? null,
  };
}

type Values = Readonly<Record<LearntParameter, number>>;

/** Apart from the sequences of the weather and of the site's own draws. */
const seedFactor = 11;

/** Middle and spread of the seasons' values, before what no plant goes below; null of what was not told of. */
function foundIn(
  values: readonly Values[],
  parameters: readonly LearntParameter[],
): Record<LearntParameter, Estimate | null> {
  return ofEach((of) => {
    if (!parameters.includes(of)) return null;
    const sorted = Float64Array.from(values, (value) => value[of]).sort();
    return { mean: quantileSorted(sorted, 0.5), sd: standardDeviation(sorted) };
  });
}

function middleOf(found: Record<LearntParameter, Estimate | null>, belief: Belief): Draw {
  return drawOf(ofEach((of) => (found[of] ?? seasonEstimate(belief, of)).mean));
}
