import type { Cause, RunCause } from './causes.ts';
import type { SeasonFacts } from './season-facts.ts';
import { noneUntold, seenShare } from './sight.ts';
import type { Symptom } from './symptoms.ts';

/** A cause that lies in the seasons as told: the same seasons without it. */
export type Cure = { cause: RunCause; prior: number; seasons: readonly SeasonFacts[] };

/** Something that may have come to the seasons as told, null: no cause on the list; as other seasons, or by what it shows. */
export type Addition = { cause: Cause | null; prior: number } & (
  | { seasons: readonly SeasonFacts[] }
  | { shows: Partial<Record<Symptom, number>> }
);

/** What each cause weighs; null: what no cause on the list accounts for. */
export type Credits = Map<Cause | null, number>;

/** What many a sound crop shows too has a smaller part (memory). */
const minor: ReadonlySet<Symptom> = new Set([
  'dry-tips',
  'bent-leaves',
  'too-hot',
  'split',
  'fell-early',
] as const);
const minorWeight = 0.3;

/**
 * Joint probability of each cause and of what was seen, up to a constant. Either nothing has come to the seasons as told,
 * or one thing has, as far as that makes likelier what was seen. It is then credited, symptom by symptom, to that thing as far as it would not have been seen
 * without it; and what the seasons as told show, to the causes in them as far as it goes when they are taken away. Each
 * symptom has a part of its own, so that of two things seen with two causes each cause gets its own.
 */
export function creditsOf(
  told: readonly Symptom[],
  asTold: readonly SeasonFacts[],
  cures: readonly Cure[],
  additions: readonly Addition[],
): Credits {
  const credits: Credits = new Map();
  const weights = told.map((symptom) => (minor.has(symptom) ? minorWeight : 1));
  const sum = weights.reduce((a, b) => a + b, 0);
  const parts = weights.map((weight) => weight / sum);
  const add = (cause: Cause | null, credit: number) => credits.set(cause, (credits.get(cause) ?? 0) + credit);
  asTold.forEach((season, at) => {
    const base = told.map((symptom) => seenShare(symptom, season));
    const gone = told.map((symptom, of) => goneWith(cures, at, symptom, base[of]));
    const creditBase = (of: number, credit: number) => {
      let left = 1;
      for (const [cause, share] of gone[of]) {
        add(cause, credit * share);
        left -= share;
      }
      // what sound crops show too needs no cause
      add(minor.has(told[of]) ? 'nothing-wrong' : null, credit * Math.max(0, left));
    };
    const nothing = season.weight * noneUntold(told, season) * product(base);
    for (const [of, part] of parts.entries()) creditBase(of, nothing * part);
    for (const addition of additions) {
      const { cause, prior } = addition;
      const with_ =
        'shows' in addition
          ? told.map((symptom, of) => 1 - (1 - base[of]) * (1 - (addition.shows[symptom] ?? 0)))
          : told.map((symptom) => seenShare(symptom, addition.seasons[at]));
      const others = 'shows' in addition ? season : addition.seasons[at];
      const lift = 1 - product(base) / product(with_);
      if (lift <= 0) continue;
      const weight = prior * season.weight * noneUntold(told, others) * product(with_) * lift;
      for (const [of, part] of parts.entries()) {
        const own = Math.min(1, Math.max(0, 1 - base[of] / with_[of]) / lift);
        add(cause, weight * part * own);
        creditBase(of, weight * part * (1 - own));
      }
    }
  });
  return credits;
}

/** Shares of a symptom that go when each cause is taken away; together no more than all of it. */
function goneWith(cures: readonly Cure[], at: number, symptom: Symptom, base: number): [RunCause, number][] {
  const shares = cures.map(({ cause, prior, seasons }): [RunCause, number] => [
    cause,
    prior * Math.max(0, 1 - seenShare(symptom, seasons[at]) / base),
  ]);
  const sum = shares.reduce((total, [, share]) => total + share, 0);
  return sum <= 1 ? shares : shares.map(([cause, share]) => [cause, share / sum]);
}

function product(shares: readonly number[]): number {
  return shares.reduce((total, share) => total * share, 1);
}
