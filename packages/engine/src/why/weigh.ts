import { limits, percentiles } from '../season/index.ts';
import { actedOn, without } from './acts.ts';
import type { Cause } from './causes.ts';
import { type Circumstance, circumstanceOf } from './circumstance.ts';
import { type Addition, type Credits, type Cure, creditsOf } from './credit.ts';
import { runTrials } from './run-trials.ts';
import { type SeasonFacts, type Trial, type Tried, tryTrial } from './season-facts.ts';
import { seenCauses, unlisted } from './seen-causes.ts';
import { seenShare } from './sight.ts';
import type { Symptom } from './symptoms.ts';
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

/** What was weighed, and how. */
export type Weighed = {
  asTold: Tried;
  credits: Credits;
  runs: ReadonlyMap<Cause, RunFound>;
  circumstances: ReadonlyMap<Cause, Circumstance>;
};

/** Share of the seasons in which a grower would see a symptom, the mean of those told, 0…1. */
export function meanSight(seasons: readonly SeasonFacts[], told: readonly Symptom[]): number {
  let sum = 0;
  for (const of of seasons) for (const symptom of told) sum += of.weight * seenShare(symptom, of);
  return sum / told.length;
}

/** Weighs every cause of what was seen, by the season as told run with and without each. */
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
  const whole = meanSight(asTold.facts, told);
  const runs = new Map<Cause, RunFound>();
  const explained = new Map<Cause, number>();
  // of several ways in which a cause may have come, the one that explains most is told
  const tell = (cause: Cause, prior: number, found: RunFound) => {
    const gain = meanSight(found.atWork.facts, told) - meanSight(found.without.facts, told);
    if (runs.has(cause) && prior * gain <= (explained.get(cause) ?? 0)) return;
    runs.set(cause, found);
    explained.set(cause, prior * gain);
  };
  const cures: Cure[] = [];
  const additions: Addition[] = [];
  for (const { tried, ...trial } of trials) {
    const { cause, prior, told: isTold } = trial;
    if (tried.length === 0) continue;
    if (isTold) {
      const ways = tried.map((of) => ({ ...of, seasons: without(trial, asTold.facts, of.tried.facts) }));
      const best = most(ways, ({ change, tried: of, seasons }) => {
        return of.grown.goodShare - (isDoable(change) ? 0 : 1) - meanSight(seasons, told) / whole;
      });
      const strongest = most(ways, ({ seasons }) => -meanSight(seasons, told));
      cures.push({ cause, prior, seasons: strongest.seasons });
      tell(cause, prior, { change: best.change, atWork: asTold, without: best.tried, told: true });
      continue;
    }
    const ways = tried.map((of) => ({ ...of, seasons: actedOn(trial, asTold.facts, of.tried.facts) }));
    for (const { seasons } of ways) additions.push({ cause, prior: prior / ways.length, seasons });
    const worst = most(ways, ({ seasons }) => meanSight(seasons, told));
    tell(cause, prior, { change: worst.change, atWork: worst.tried, without: asTold, told: false });
  }
  for (const [cause, typical] of typicalOf(saying)) additions.push({ cause, ...typical });
  const circumstances = new Map<Cause, Circumstance>();
  for (const [cause, { prior, shows }] of Object.entries(seenCauses) as [
    keyof typeof seenCauses,
    (typeof seenCauses)[keyof typeof seenCauses],
  ][]) {
    if (!told.some((symptom) => shows[symptom])) continue;
    const circumstance = circumstanceOf(cause, saying.trial, asTold.grown);
    circumstances.set(cause, circumstance);
    additions.push({ cause, prior: prior * circumstance.factor, shows });
  }
  additions.push({ cause: null, ...unlisted });
  return { asTold, credits: creditsOf(told, asTold.facts, cures, additions), runs, circumstances };
}

function most<Of>(list: readonly Of[], worth: (of: Of) => number): Of {
  return list.reduce((a, b) => (worth(b) > worth(a) ? b : a));
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
