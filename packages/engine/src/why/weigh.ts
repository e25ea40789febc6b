import type { Cause } from './causes.ts';
import { type Circumstance, circumstanceOf } from './circumstance.ts';
import { runTrials } from './run-trials.ts';
import { type Trial, type Tried, tryTrial } from './season-facts.ts';
import { seenCauses, unlisted } from './seen-causes.ts';
import { seenShare, toldShare } from './sight.ts';
import { type Symptom, symptoms } from './symptoms.ts';
import type { CauseTrial, Saying } from './trials.ts';
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

/** Mean over the seasons of how likely they are to be told of so. */
function weightOf(
  { facts }: Tried,
  told: readonly Symptom[],
  raised?: Partial<Record<Symptom, number>>,
): number {
  let sum = 0;
  for (const of of facts) sum += of.weight * toldShare(told, of, raised);
  return sum;
}

/** Share of the seasons in which a grower would see all of this, 0…1. */
export function sightOf({ facts }: Tried, told: readonly Symptom[]): number {
  let sum = 0;
  for (const of of facts)
    sum += of.weight * told.reduce((share, symptom) => share * seenShare(symptom, of), 1);
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
  const attempt = (trial: Trial) => tryTrial(trial, isAbout);
  const asTold = attempt(saying.trial);
  const whole = weightOf(asTold, told);
  const weights = new Map<Cause, number>();
  const runs = new Map<Cause, RunFound>();
  const add = (cause: Cause, weight: number, found: RunFound) => {
    if (weight > (weights.get(cause) ?? 0) || !runs.has(cause)) runs.set(cause, found);
    weights.set(cause, (weights.get(cause) ?? 0) + weight);
  };
  const inTold: { cause: Cause; share: number; found: RunFound }[] = [];
  for (const cause of runTrials(saying, isStoreSaid)) {
    if (cause.told) {
      const cured = bestWithout(cause, attempt, told, whole);
      if (cured)
        inTold.push({
          cause: cause.cause,
          share: cause.prior * cured.share,
          found: { ...cured, atWork: asTold, told: true },
        });
      continue;
    }
    const tried = cause.within.map((trial) => ({ tried: attempt(trial), weight: 0 }));
    for (const of of tried) of.weight = weightOf(of.tried, told);
    const most = tried.reduce((a, b) => (b.weight > a.weight ? b : a));
    const mean = tried.reduce((sum, { weight }) => sum + weight, 0) / tried.length;
    add(cause.cause, cause.prior * Math.max(0, mean - whole), {
      change: cause.change,
      atWork: most.tried,
      without: asTold,
      told: false,
    });
  }
  const claimed = inTold.reduce((sum, { share }) => sum + share, 0);
  for (const { cause, share, found } of inTold) add(cause, (whole * share) / Math.max(1, claimed), found);
  const circumstances = new Map<Cause, Circumstance>();
  for (const [cause, { prior, shows }] of Object.entries(seenCauses) as [
    keyof typeof seenCauses,
    (typeof seenCauses)[keyof typeof seenCauses],
  ][]) {
    if (!told.some((symptom) => shows[symptom])) continue;
    const circumstance = circumstanceOf(cause, saying.trial, asTold.grown);
    circumstances.set(cause, circumstance);
    weights.set(cause, prior * circumstance.factor * Math.max(0, weightOf(asTold, told, shows) - whole));
  }
  const anything = Object.fromEntries(symptoms.map((symptom) => [symptom, unlisted.shows]));
  const unseen =
    unlisted.prior * Math.max(0, weightOf(asTold, told, anything) - whole) + whole * Math.max(0, 1 - claimed);
  return { asTold, weights, unseen, runs, circumstances };
}

/** Of the ways to take a cause away, the one that takes most of what was seen with it and leaves the best crop. */
function bestWithout(
  { without }: Extract<CauseTrial, { told: true }>,
  attempt: (trial: Trial) => Tried,
  told: readonly Symptom[],
  whole: number,
): { change: Change; without: Tried; share: number } | null {
  let best: { change: Change; without: Tried; worth: number } | null = null;
  let share = 0;
  for (const { trial, change } of without) {
    const tried = attempt(trial);
    const gone = whole > 0 ? Math.max(0, 1 - weightOf(tried, told) / whole) : 0;
    share = Math.max(share, gone);
    const worth = gone + tried.grown.goodShare - (isDoable(change) ? 0 : 1);
    if (!best || worth > best.worth) best = { change, without: tried, worth };
  }
  return best && { ...best, share };
}

function isDoable({ code }: Change): boolean {
  return code !== 'usual-weather' && code !== 'other-weather';
}
