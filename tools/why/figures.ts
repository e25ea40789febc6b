import { type Cause, type CauseFound, causeKinds, type WhyAnswer } from '../../packages/engine/src/index.ts';
import type { Asked } from './study.ts';

/** How a cause put in was found. */
export type Found = {
  cause: Cause;
  isRun: boolean;
  cases: number;
  places: number;
  /** Shares of the cases: first at once, first after the questions, among the first three after them. */
  firstAtOnce: number;
  first: number;
  firstThree: number;
  /** What was first instead, with its number of cases, the oftenest first. */
  instead: readonly (readonly [Cause, number])[];
};

export function foundOf(asked: readonly Asked[]): Found[] {
  return [...new Set(asked.map(({ cause }) => cause))].map((cause) => {
    const cases = asked.filter((of) => of.cause === cause);
    const instead = new Map<Cause, number>();
    for (const { last } of cases) {
      const [first] = last.causes;
      if (first && first.cause !== cause) instead.set(first.cause, (instead.get(first.cause) ?? 0) + 1);
    }
    return {
      cause,
      isRun: causeKinds[cause] === 'run',
      cases: cases.length,
      places: new Set(cases.map(({ place }) => place)).size,
      firstAtOnce: shareOf(cases, ({ first }) => placeOf(first, cause) === 0),
      first: shareOf(cases, ({ last }) => placeOf(last, cause) === 0),
      firstThree: shareOf(cases, ({ last }) => placeOf(last, cause) < 3),
      instead: [...instead].sort((a, b) => b[1] - a[1]),
    };
  });
}

/** Place of a cause in an answer, 0 the first; infinite where it is not told. */
function placeOf({ causes }: WhyAnswer, cause: Cause): number {
  const at = causes.findIndex((of) => of.cause === cause);
  return at < 0 ? Number.POSITIVE_INFINITY : at;
}

export function shareOf<Of>(list: readonly Of[], is: (of: Of) => boolean): number {
  return list.filter(is).length / list.length;
}

/** Causes given a probability between two, and the share of them that were put in. */
export type Band = { from: number; to: number; given: number; right: number };

/** Bands of a tenth, and that of 70 to 90 %, after the questions. */
export function bandsOf(asked: readonly Asked[]): Band[] {
  const given = asked.flatMap(({ cause, last }) =>
    last.causes.map((of) => ({ probability: of.probability, isRight: of.cause === cause })),
  );
  const band = (from: number, to: number): Band => {
    const within = given.filter(({ probability }) => probability >= from && probability < to);
    return { from, to, given: within.length, right: shareOf(within, ({ isRight }) => isRight) };
  };
  return [...Array.from({ length: 10 }, (_, at) => band(at / 10, (at + 1) / 10)), band(0.7, 0.9)];
}

export function isFirst(
  { causes: [first] }: { causes: readonly CauseFound[] },
  stated: readonly Cause[],
): boolean {
  return first !== undefined && stated.includes(first.cause);
}
