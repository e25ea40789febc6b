import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  climateAt,
  dayNumber,
  landWarmingSinceNormalsC,
  openSite,
  type Plan,
  type Pull,
  runPlan,
  surveyPlace,
  type Verdict,
  warmed,
  whatMovesIt,
} from '../../packages/engine/src/index.ts';
import type { Place } from './places.ts';
import { type Case, type Factor, factors, type Shift } from './shifts.ts';

const years = 30;
const seed = 1;
/** Starts are looked for from this day on. */
const today = dayNumber(2027, 1, 1);

/** What is answered of a crop: middles of thirty years. */
type Answer = {
  onsetDay: number | null;
  neckFallDay: number | null;
  diameterMm: number | null;
  boltedShare: number;
  goodShare: number;
  outcome: Verdict;
};

/** What a step changes; null where the thing then does not happen. */
export type Change = {
  shift: Shift;
  answer: Answer;
  onsetDays: number | null;
  neckFallDays: number | null;
  diameterMm: number | null;
  boltedShare: number;
  goodShare: number;
};

export type FactorChange = { factor: Factor; less: Change | null; more: Change };

export type Study = {
  place: Place;
  plan: Plan;
  usual: Answer;
  changes: FactorChange[];
  /** What *How we know* says of the same crop. */
  pulls: Pull[] | null;
};

/** The best crop of a place, grown again with one thing after the other made otherwise. */
export function study(place: Place): Study {
  const { latitudeDeg, longitudeDeg, elevationM } = place;
  const climate = climateAt(readClimateNodes(), latitudeDeg, longitudeDeg, elevationM);
  const site = openSite({ climate: warmed(climate, landWarmingSinceNormalsC), years, seed });
  const { plan } = surveyPlace(site, today).classes[0].summary;
  const usual = answerOf({ site, plan });
  const changeBy = (shift: Shift) => change(usual, shift, answerOf(shift.apply({ site, plan })));
  return {
    place,
    plan,
    usual,
    changes: factors.map((factor) => ({
      factor,
      less: factor.less && changeBy(factor.less),
      more: changeBy(factor.more),
    })),
    pulls: whatMovesIt(site, plan),
  };
}

function answerOf({ site, plan }: Case): Answer {
  const { onset, neckFall, bulbDiameterMm, boltedPlantsShare, seasonShares, outcome } = runPlan(site, plan);
  return {
    onsetDay: onset.days?.p50 ?? null,
    neckFallDay: neckFall.days?.p50 ?? null,
    diameterMm: bulbDiameterMm?.p50 ?? null,
    boltedShare: boltedPlantsShare?.p50 ?? 0,
    goodShare: seasonShares.good,
    outcome,
  };
}

function change(usual: Answer, shift: Shift, answer: Answer): Change {
  const less = (a: number | null, b: number | null) => (a === null || b === null ? null : a - b);
  return {
    shift,
    answer,
    onsetDays: less(answer.onsetDay, usual.onsetDay),
    neckFallDays: less(answer.neckFallDay, usual.neckFallDay),
    diameterMm: less(answer.diameterMm, usual.diameterMm),
    boltedShare: answer.boltedShare - usual.boltedShare,
    goodShare: answer.goodShare - usual.goodShare,
  };
}
