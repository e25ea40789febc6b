import { clamp, normalCdf } from '../math/index.ts';
import {
  bulbDiameterMm,
  daysToTopsOver,
  mostGreenLeaves,
  plantSpreadCv,
  topsBetweenPlantsDays,
} from '../plant/index.ts';
import { type DayTrace, type Outcome, stage } from '../season/index.ts';
import type { Sighting } from './sightings.ts';

/** One season of the model, as far as it can be held against what was seen. */
export type Told = { trace: DayTrace; outcome: Outcome; dryMatterShare: number };

/**
 * Spreads of what is seen about what the model says. Between plants of a stand: leaves by about two thirds of one, tops
 * by about five days, bulb width by a third of the spread in mass (a mass goes as the width cubed). A count slips by one
 * on every fifth plant. What model and eye miss alike on all plants does not grow less with more of them. All but the
 * last of these from memory: common practice, no source.
 */
const spread = {
  leavesBetweenPlants: 0.65,
  leavesSlip: Math.sqrt(0.2 + 1 / 12),
  leavesModel: 0.3,
  bulbBetweenPlants: plantSpreadCv / 3,
  bulbModel: 0.08,
  youngBulbModel: 0.35,
  onsetDays: 6,
  topsModelDays: 2.5,
  floweringLogit: 1.5,
  massModel: 0.2,
} as const;

/** Tops die within about two weeks of going over (common practice, no source), days. */
const topsDieDays = 14;
/** Bulbs have begun where they are at least twice as wide as the neck (bulbing ratio: Tesfay, thesis UKZN; Lancaster et al. 1996). */
const bulbingRatio = 2;
/** Width of a neck: so much a leaf made, to a limit, mm (memory; at planting out pencils, later thumbs). */
const neckWidth = { aLeafMm: 1.5, mostMm: 15 } as const;
/** A plant is wider at its base than at its neck even before long days have told on it. */
const leafyRatio = 1.2;
/** Young bulbs are told less surely by the model than those of this width and more, mm. */
const sureMm = 25;
/** One observation in so many is a slip of the pen or of the plant. */
const slipShare = 0.02;
/** Degrees of freedom of Student's t: tails in which one slip does not rule. */
const tailDegrees = 4;

/** Log likelihood of what was seen, were the season so; a constant left out. */
export function logLikelihood(seen: readonly Sighting[], told: Told): number {
  let sum = 0;
  for (const sighting of seen) {
    if (sighting.leavesGreen !== null) sum += ofLeaves(sighting, sighting.leavesGreen, told);
    if (sighting.bulbMm !== null) sum += ofBulb(sighting, sighting.bulbMm, told);
    if (sighting.topsOver !== null) sum += ofTops(sighting, sighting.topsOver, told);
    if (sighting.flowering !== null) sum += ofFlowering(sighting, sighting.flowering.share, told);
    if (sighting.weighed !== null) sum += ofWeight(sighting, sighting.weighed, told);
  }
  return sum;
}

function ofLeaves({ at, plants }: Sighting, counted: number, told: Told): number {
  const alone = Math.hypot(spread.leavesBetweenPlants, spread.leavesSlip);
  const sd = Math.hypot(alone / Math.sqrt(plants), spread.leavesModel);
  return heavyTailed((Math.min(counted, mostGreenLeaves) - greenLeavesOn(told, at)) / sd);
}

/** Green leaves on a day from the start: more and more in a tray, and fewer and fewer once the season is over. */
export function greenLeavesOn({ trace, outcome }: Told, at: number): number {
  const { emergedOn, plantedOn, leavesPlanted } = outcome;
  if (trace.length === 0 || at < emergedOn) return 0;
  if (at < plantedOn) return (leavesPlanted * (at - emergedOn)) / (plantedOn - emergedOn);
  if (at < trace.length) return trace.leavesGreen[at];
  const since = at - trace.length + 1;
  return trace.leavesGreen[trace.length - 1] * Math.max(0, 1 - since / topsDieDays);
}

/** With the neck, whether bulbs have begun; once they have, their width. */
function ofBulb({ at, plants, neckMm }: Sighting, bulbMm: number, told: Told): number {
  const { trace, outcome } = told;
  if (at < outcome.plantedOn || trace.length === 0) return Math.log(slipShare);
  const day = Math.min(at, trace.length - 1);
  let sum = 0;
  if (neckMm !== null) {
    const since = outcome.reached >= stage.onset ? at - outcome.onsetOn : Number.NEGATIVE_INFINITY;
    const hasBegun = bulbMm >= bulbingRatio * neckMm;
    sum += Math.log(
      slipShare + (1 - 2 * slipShare) * normalCdf((hasBegun ? since : -since) / spread.onsetDays),
    );
    if (!hasBegun) return sum;
  }
  const expectedMm = plantWidthMm(trace, day);
  const model = spread.bulbModel + spread.youngBulbModel * Math.exp(-expectedMm / sureMm);
  const sd = Math.hypot(spread.bulbBetweenPlants / Math.sqrt(plants), model);
  return sum + heavyTailed(Math.log(bulbMm / expectedMm) / sd) - Math.log(sd);
}

/** Width of a plant at its base, mm: leaf bases that swell to the ratio of onset, and the bulb as it grows. */
function plantWidthMm({ leavesMade, bulbing, bulbG }: DayTrace, day: number): number {
  const neckMm = Math.min(neckWidth.mostMm, neckWidth.aLeafMm * Math.max(1, leavesMade[day]));
  const baseMm = neckMm * (leafyRatio + (bulbingRatio - leafyRatio) * bulbing[day]);
  return Math.cbrt(bulbDiameterMm(bulbG[day]) ** 3 + baseMm ** 3);
}

/** Plants go over one by one about the day of neck fall; none over yet, and all over, tell one side only. */
function ofTops(
  { at }: Sighting,
  { share, of: plants }: { share: number; of: number },
  { outcome }: Told,
): number {
  const sd = topsBetweenPlantsDays;
  const edge = Math.max(0.02, 0.5 / plants);
  // day of neck fall that this share tells, from its own
  const offset = -daysToTopsOver(clamp(share, edge, 1 - edge));
  const fellOn = outcome.reached === stage.fallen ? outcome.fellOn : Number.POSITIVE_INFINITY;
  const away = fellOn - (at + offset);
  const blur = spread.topsModelDays;
  if (share > edge && share < 1 - edge)
    return heavyTailed(Math.min(Math.abs(away), 200) / Math.hypot(blur, sd / Math.sqrt(plants)));
  const held = normalCdf((share <= edge ? away : -away) / blur);
  return Math.log(slipShare + (1 - slipShare) * held);
}

/** More in flower than the season makes is against it; fewer only once bulbs have begun: the others may yet come. */
function ofFlowering({ at }: Sighting, share: number, { outcome }: Told): number {
  const logit = (of: number) => {
    const inside = clamp(of, 0.01, 0.99);
    return Math.log(inside / (1 - inside));
  };
  const away = logit(share) - logit(outcome.boltedShare);
  const isLate = outcome.reached >= stage.onset && at > outcome.onsetOn;
  return away < 0 && !isLate ? 0 : heavyTailed(away / spread.floweringLogit);
}

/** Mean mass of bulbs in a stand against that of its median plant (log-normal). */
const meanOverMedian = Math.sqrt(1 + plantSpreadCv ** 2);

function ofWeight(
  { at }: Sighting,
  { meanG, bulbs }: { meanG: number; bulbs: number },
  { trace, outcome, dryMatterShare }: Told,
): number {
  // a trace holds nothing of days before there was a bed
  if (at < outcome.plantedOn) return Math.log(slipShare);
  const atEnd = at >= trace.length - 1;
  const medianG = atEnd ? outcome.bulbDryG / dryMatterShare : trace.bulbG[at];
  if (!(medianG > 0)) return Math.log(slipShare);
  const sd = Math.hypot(plantSpreadCv / Math.sqrt(bulbs), spread.massModel);
  return heavyTailed(Math.log(meanG / (medianG * meanOverMedian)) / sd);
}

/** Log of Student's t, a constant left out. */
function heavyTailed(z: number): number {
  return (-(tailDegrees + 1) / 2) * Math.log(1 + (z * z) / tailDegrees);
}
