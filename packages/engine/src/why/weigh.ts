import { mean } from '../math/index.ts';
import { limits, percentiles } from '../season/index.ts';
import { actedOn } from './acts.ts';
import type { Cause } from './causes.ts';
import { type Circumstance, circumstanceOf } from './circumstance.ts';
import { runTrials } from './run-trials.ts';
import { type SeasonFacts, type Trial, type Tried, tryTrial } from './season-facts.ts';
import { seenCauses, unlisted } from './seen-causes.ts';
import { allSeen, noneUntold } from './sight.ts';
import { type Symptom, symptoms } from './symptoms.ts';
import type { Saying } from './trials.ts';
import { typicalOf } from './typical.ts';
import type { Change } from './what-if.ts';

/** A cause as weighed by runs: the season with it at work and without it. */
export type RunFound = {
  change: Change;
  atWork: Tried;
  without: Tried;
  /** Whether it lies in the season as told. */
  told: boolean;
};

/** What each cause weighs: joint probabilities of the cause and of what was seen, up to a constant. */
export type Weighed = {
  asTold: Tried;
  weights: ReadonlyMap<Cause, number>;
  /** Of what is on no list, and of what comes about in the season as told whatever one does. */
  unseen: number;
  runs: ReadonlyMap<Cause, RunFound>;
  circumstances: ReadonlyMap<Cause, Circumstance>;
};

/** @param inThose seasons that tell whether something else would have struck; as a rule the same */
function weightOf(
  facts: readonly SeasonFacts[],
  told: readonly Symptom[],
  {
    raised,
    inThose = facts,
  }: { raised?: Partial<Record<Symptom, number>>; inThose?: readonly SeasonFacts[] } = {},
): number {
  let sum = 0;
  for (const [at, of] of facts.entries())
    sum += of.weight * allSeen(told, of, raised) * noneUntold(told, inThose[at]);
  return sum;
}

/** Share of the seasons in which a grower would see all of this, 0…1. */
export function sightOf({ facts }: Tried, told: readonly Symptom[]): number {
  let sum = 0;
  for (const of of facts) sum += of.weight * allSeen(told, of);
  return sum;
}

/**
 * Weighs every cause of what was seen. A cause that lies in the season as told weighs as much as goes with it when it is
 * taken away; one that may have been there unsaid, or that no run can know, as much as comes with it, times how often it is
 * there. What the season as told shows is shared out among the causes in it, none counted twice.
 */
export function weigh(
  saying: Saying,
  told: readonly Symptom[],
  isStoreSaid: boolean,
  isAbout: boolean,
): Weighed {
  const attempted = new Map<Trial, Tried>();
  const attempt = (trial: Trial) => {
    const tried = attempted.get(trial) ?? tryTrial(trial, isAbout);
    attempted.set(trial, tried);
    return tried;
  };
  const asTold = attempt(saying.trial);
  const trials = runTrials(saying, isStoreSaid).map((trial) => ({
    ...trial,
    tried: trial.told
      ? trial.without.map((of) => ({ change: of.change, tried: attempt(of.trial) }))
      : trial.within.map((of) => ({ change: trial.change, tried: attempt(of) })),
  }));
  const starts = trials.flatMap((of) => (of.cause === 'started-too-late' ? of.tried : []));
  const best = [asTold, ...starts.map(({ tried }) => tried)].reduce((a, b) =>
    soundDryG(b) > soundDryG(a) ? b : a,
  );
  for (const { facts } of [asTold, ...trials.flatMap((of) => of.tried.map(({ tried }) => tried))])
    for (const [at, of] of facts.entries())
      of.hopedDryG = Math.max(asTold.facts[at].bulbDryG, best.facts[at].bulbDryG);
  const whole = weightOf(asTold.facts, told);
  const weights = new Map<Cause, number>();
  const runs = new Map<Cause, RunFound>();
  const add = (cause: Cause, weight: number, found: RunFound) => {
    if (weight > (weights.get(cause) ?? 0) || !runs.has(cause)) runs.set(cause, found);
    weights.set(cause, (weights.get(cause) ?? 0) + weight);
  };
  const inTold: { cause: Cause; share: number; found: RunFound }[] = [];
  for (const { tried, ...trial } of trials) {
    const { cause, prior, told: isTold } = trial;
    const weighed = tried.map((of) => ({
      ...of,
      // taken away, a cause must take what was seen with it: that something else would have struck is no cure
      weight: weightOf(
        actedOn(trial, asTold.facts, of.tried.facts),
        told,
        isTold ? { inThose: asTold.facts } : {},
      ),
    }));
    if (isTold) {
      const cured = bestWithout(weighed, whole);
      if (cured)
        inTold.push({ cause, share: prior * cured.share, found: { ...cured, atWork: asTold, told: true } });
      continue;
    }
    const most = weighed.reduce((a, b) => (b.weight > a.weight ? b : a));
    add(cause, prior * Math.max(0, mean(weighed.map(({ weight }) => weight)) - whole), {
      change: most.change,
      atWork: most.tried,
      without: asTold,
      told: false,
    });
  }
  const claimed = inTold.reduce((sum, { share }) => sum + share, 0);
  for (const { cause, share, found } of inTold) add(cause, (whole * share) / Math.max(1, claimed), found);
  for (const [cause, { prior, shows }] of typicalOf(saying)) {
    const gain = Math.max(0, weightOf(asTold.facts, told, { raised: shows }) - whole);
    weights.set(cause, (weights.get(cause) ?? 0) + prior * gain);
  }
  const circumstances = new Map<Cause, Circumstance>();
  for (const [cause, { prior, shows }] of Object.entries(seenCauses) as [
    keyof typeof seenCauses,
    (typeof seenCauses)[keyof typeof seenCauses],
  ][]) {
    if (!told.some((symptom) => shows[symptom])) continue;
    const circumstance = circumstanceOf(cause, saying.trial, asTold.grown);
    circumstances.set(cause, circumstance);
    weights.set(
      cause,
      prior * circumstance.factor * Math.max(0, weightOf(asTold.facts, told, { raised: shows }) - whole),
    );
  }
  const anything = Object.fromEntries(symptoms.map((symptom) => [symptom, unlisted.shows]));
  const unseen =
    unlisted.prior * Math.max(0, weightOf(asTold.facts, told, { raised: anything }) - whole) +
    whole * Math.max(0, 1 - claimed);
  return { asTold, weights, unseen, runs, circumstances };
}

type WeighedTrial = { change: Change; tried: Tried; weight: number };

/** Of the ways to take a cause away, the one that takes most of what was seen with it and leaves the best crop. */
function bestWithout(
  ways: readonly WeighedTrial[],
  whole: number,
): { change: Change; without: Tried; share: number } | null {
  if (ways.length === 0 || whole === 0) return null;
  const goneWith = ({ weight }: WeighedTrial) => Math.max(0, 1 - weight / whole);
  const worth = (way: WeighedTrial) =>
    goneWith(way) + way.tried.grown.goodShare - (isDoable(way.change) ? 0 : 1);
  const best = ways.reduce((a, b) => (worth(b) > worth(a) ? b : a));
  return { change: best.change, without: best.tried, share: Math.max(...ways.map(goneWith)) };
}

function isDoable({ code }: Change): boolean {
  return code !== 'usual-weather' && code !== 'other-weather';
}

/** Dry matter of the middling bulb of a crop that mostly ends well, g. */
function soundDryG({ facts }: Tried): number {
  return percentiles(
    facts.map(({ bulbDryG, isRipe, boltedShare, killedShare }) =>
      isRipe && boltedShare < limits.bolted && killedShare < limits.killed ? bulbDryG : 0,
    ),
  ).p50;
}
