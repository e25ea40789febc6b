import {
  adjustedDepletionShare,
  effectiveRainMm,
  nextDepletion,
  onionCropCoefficient,
  onionRootDepthM,
  waterStress,
} from '../bed/index.ts';
import {
  ageNeed,
  areaUpTo,
  boltedShare,
  boltingSizeFactor,
  bulbShare,
  canopyHaste,
  coverUse,
  finalTransferShare,
  greenShare,
  hardening,
  heavedShare,
  interceptedShare,
  killingTempC,
  lastLeavesRate,
  lastLeavesRipening,
  leafLimit,
  mostGreenLeaves,
  nextSnowMm,
  nightKillShare,
  noHarmAboveC,
  photoperiodFactor,
  reversal,
  ripeningPhotoperiodFactor,
  snowShelterC,
  warmthUndoes,
  wetSpellFactor,
  youngLeafArea,
} from '../plant/index.ts';
import type { Crop } from './crop.ts';
import type { Drivers } from './drivers.ts';
import type { Seedling } from './nursery.ts';
import { type Outcome, stage } from './outcome.ts';
import type { DayTrace } from './trace.ts';

// Plain numbers for the loop: reading them off the object costs the optimiser its bets.
const { planted, onset: begun, fallen } = stage;

/** Smallest share of plants worth growing on. */
const standLost = 0.02;
/**
 * Cold that comes later than this before a crop's last day shows no stalk in it: about ten weeks go by (Holdsworth &
 * Heath IV), more in the cool of autumn (memory).
 */
const stalkDays = 120;
/** Days over which hardening looks back. */
const hardeningDays = 14;
const mostLeaves = leafLimit - 1;
/** Cold of the last weeks before bulbs start turns no plant: young bulbs hold stalks back (Holdsworth & Heath IV; length memory). */
const idleColdDays = 28;

// Thermal age at which each leaf appeared; reused between runs, one run at a time.
const leafBorn = new Float64Array(leafLimit + 2);
// Cold met on each of the last days, round and round.
const recentCold = new Float64Array(idleColdDays);

/**
 * Grows the median plant in its bed from `seedling` (as it stands on the day it is in the ground and growing)
 * to neck fall, or to `crop.lastDay`.
 *
 * @param open weather drivers of the bare bed; `covered` under the crop's cover (the same where there is none)
 * @param at index in the drivers of the start day
 * @param photoperiodH hours of photoperiod; `photoAt` is the index of the start day
 */
export function grow(
  crop: Crop,
  seedling: Seedling,
  open: Drivers,
  covered: Drivers,
  at: number,
  photoperiodH: Float64Array,
  photoAt: number,
  out: Outcome,
  trace: DayTrace | null,
): void {
  const { growth, type, areaTotals, draw } = crop;
  const phyllochron = growth.phyllochron * draw.phyllochronFactor;
  const criticalH = type.criticalPhotoperiodH + draw.criticalShiftH + crop.shadePenaltyH;
  // Leaves and age are one clock: a plant quick to leaf is soon big enough to bulb.
  const competenceTT = growth.competenceTT * type.competenceShare * draw.phyllochronFactor;
  const ripeningTT = type.ripeningTT * draw.ripeningFactor * crop.ripeningFactor;
  const coldOpen = open.cold(type.vernalCeilingC);
  const coldCovered = covered.cold(type.vernalCeilingC);
  const ripenOpen = open.ripeningTT(type.ripeningBaseC, type.ripeningCapC);
  const ripenCovered = covered.ripeningTT(type.ripeningBaseC, type.ripeningCapC);
  const perM2 = crop.standPerM2;
  const warmthOpen = open.bulbingTemp(growth.bulbingBaseC, growth.bulbingFullC);
  const warmthCovered = covered.bulbingTemp(growth.bulbingBaseC, growth.bulbingFullC);
  const referenceEt = crop.followsWater ? open.referenceEt() : open.rainMm;
  const leastAreaPerG = youngLeafArea(crop.youngG) / crop.youngG;

  let leaves = seedling.leaves;
  let age = seedling.age;
  let shootG = seedling.shootG;
  let bulbG = 0;
  let bulbing = seedling.bulbing;
  let cold = seedling.coldDays;
  let ripening = 0;
  let onset = false;
  let lifeTT = 0;
  let oldest = 0;
  let turnBack = 0;
  let alive = seedling.aliveShare;
  let lifted = 0;
  let snowMm = 0;
  let depletionMm = 0;
  let thirsty = 0;
  let recentC = open.tempMeanC[at + seedling.day];
  let leafCounted = Math.floor(leaves);
  let green = leaves;
  // Leaves brought along count as born now; the oldest of them go first.
  for (let i = 0; i <= leafCounted; i++) leafBorn[i] = 0;
  recentCold.fill(0);
  let rooting = crop.rootingTT;
  const coverEnds = seedling.day + coverUse.days;
  const first = seedling.day;

  for (let day = first; day < crop.lastDay; day++) {
    const i = at + day;
    const outsideMinC = open.tempMinC[i];
    const isCovered = crop.covered && (day < coverEnds || outsideMinC < coverUse.frostBelowC);
    const air = isCovered ? covered : open;
    const meanC = air.tempMeanC[i];
    const P = photoperiodH[photoAt + day];

    // Winter: the growing point sits at the ground, half way between air and bed.
    if (outsideMinC < 0 || snowMm > 0) {
      const crownC = (outsideMinC + open.soilMeanC[i]) / 2;
      const sheltered = crownC + (isCovered ? crop.coverShelterC : 0) + snowShelterC(snowMm);
      if (sheltered < noHarmAboveC) {
        alive *= 1 - nightKillShare(sheltered, killingTempC(leaves, hardening(recentC)));
        if (alive < standLost) {
          alive = 0;
          break;
        }
      }
      if (snowMm === 0 && !isCovered) {
        const lost = alive * heavedShare(outsideMinC, meanC, open.wetness[i], shootG, growth.frostHeaveLoss);
        alive -= lost;
        lifted += lost;
      }
      snowMm = nextSnowMm(snowMm, open.rainMm[i], open.tempMeanC[i]);
    }
    recentC += (meanC - recentC) / hardeningDays;

    // Leaves.
    lifeTT += air.lifeTT[i];
    const isRooted = rooting <= 0;
    if (!isRooted) rooting -= air.leafTT[i];
    if (isRooted) {
      if (ripening < lastLeavesRipening && leaves < mostLeaves) {
        const pace = (leaves < 3 ? growth.firstLeavesFactor : 1) * phyllochron;
        leaves += (air.leafTT[i] / pace) * (onset ? lastLeavesRate : 1);
        if (leaves > mostLeaves) leaves = mostLeaves;
        while (leafCounted < Math.floor(leaves)) leafBorn[++leafCounted] = lifeTT;
      }
      age += air.leafTT[i];
    }
    while (oldest < leafCounted && lifeTT - leafBorn[oldest + 1] > growth.leafLifeTT) oldest++;
    green = leaves - oldest;
    if (green > mostGreenLeaves) green = mostGreenLeaves;

    // Growth.
    const standing = areaUpTo(areaTotals, leaves) - areaUpTo(areaTotals, leaves - green);
    // A young plant's area lies above the chord to its end, so most days need no logarithm.
    const young = shootG * leastAreaPerG >= standing ? standing : youngLeafArea(shootG);
    const areaCm2 = (young < standing ? young : standing) * greenShare(ripening);
    const lai = areaCm2 * perM2 * 1e-4;
    const intercepted = interceptedShare(growth.extinction * lai);

    // Water: what the bed would lack on rain alone; a watered bed is refilled before it does harm.
    let stress = 1;
    if (crop.followsWater) {
      const et = referenceEt[i];
      const cropEt = et * onionCropCoefficient(intercepted, ripening);
      const available = crop.availableMmPerM * onionRootDepthM(leaves);
      stress = waterStress(depletionMm, available, adjustedDepletionShare(crop.readilyShare, cropEt));
      if (stress < 1) {
        thirsty++;
        if (crop.watered) {
          depletionMm = 0;
          stress = 1;
        }
      }
      depletionMm = nextDepletion(
        depletionMm,
        effectiveRainMm(open.rainMm[i], et),
        cropEt * stress,
        available,
      );
    }

    if (isRooted) {
      const disease = wetSpellFactor(air.wetness[i], meanC);
      const byLight = (growth.radiationUseGMJ * air.growthLight[i] * crop.lightShare * intercepted) / perM2;
      const byAge = (shootG + bulbG) * growth.growthRate * air.growthTT[i];
      const gain = (byAge < byLight ? byAge : byLight) * stress * disease;
      if (onset) {
        const toBulb = bulbShare(ripening) * gain;
        bulbG += toBulb;
        shootG += gain - toBulb;
      } else {
        // What the standing leaves cannot hold is not made.
        const room = standing * growth.shootPerLeafArea;
        const most = room > crop.youngG ? room : crop.youngG;
        const grown = shootG + gain;
        if (grown < most) shootG = grown;
        else if (most > shootG) shootG = most;
      }
    }

    if (!onset) {
      // Cold towards flowering; what comes in the last weeks shows no stalk before the crop is over.
      const chill = (isCovered ? coldCovered : coldOpen)[i];
      const slot = day % idleColdDays;
      recentCold[slot] = 0;
      if (chill > 0 && shootG > type.boltingSizeG && day < crop.lastDay - stalkDays) {
        recentCold[slot] =
          seedling.coldPace * chill * boltingSizeFactor(shootG, type.boltingSizeG, growth.boltingSizeSpan);
        cold += recentCold[slot];
      }
      if (meanC > warmthUndoes.aboveC && cold > seedling.storeColdDays)
        cold = Math.max(seedling.storeColdDays, cold - warmthUndoes.days);
      // Bulbing: marginal day lengths induce less than is lost, so they never add up to a bulb.
      // A plant that is still rooting after its move neither grows nor bulbs, but keeps what long days have done.
      if (isRooted || P < criticalH) {
        if (P > criticalH && age >= competenceTT * ageNeed(P - criticalH) && leaves >= type.minimumLeaves)
          bulbing +=
            growth.bulbingRate *
            photoperiodFactor(P, criticalH, growth.photoperiodRampH) *
            (isCovered ? warmthCovered : warmthOpen)[i] *
            canopyHaste(lai);
        bulbing = bulbing > growth.bulbingLossPerDay ? bulbing - growth.bulbingLossPerDay : 0;
      }
      if (bulbing >= 1) {
        onset = true;
        bulbing = 1;
        for (let back = 0; back < idleColdDays; back++) cold -= recentCold[back];
        if (cold < seedling.storeColdDays) cold = seedling.storeColdDays;
        out.onsetOn = day;
        out.leavesMade = leaves;
        out.leavesGreen = green;
        out.shootG = shootG;
        out.photoperiodH = P;
      }
    } else {
      ripening +=
        ((isCovered ? ripenCovered : ripenOpen)[i] / ripeningTT) *
        ripeningPhotoperiodFactor(P, criticalH, growth.ripeningPhotoperiodSlope) *
        crop.densityHaste;
      if (ripening < reversal.beforeRipening) {
        const back = P < criticalH - reversal.shortfallH || meanC < reversal.coldC;
        turnBack = back ? turnBack + 1 : turnBack > 0 ? turnBack - 1 : 0;
        if (turnBack > reversal.days) {
          out.reverted = true;
          break;
        }
      }
    }
    if (trace) trace.put(day, leaves, green, shootG, bulbG / type.dryMatterShare, bulbing, ripening);
    if (ripening >= 1) {
      out.fellOn = day;
      break;
    }
  }
  out.reached = ripening >= 1 ? fallen : onset ? begun : planted;
  if (!onset) {
    out.leavesMade = leaves;
    out.leavesGreen = green;
    out.shootG = shootG;
  }
  out.bulbDryG = onset ? bulbG + finalTransferShare * shootG * Math.min(1, ripening) : 0;
  out.coldDays = cold;
  out.boltedShare = boltedShare(cold, type.vernalHalfD, type.vernalSpreadD);
  out.aliveShare = alive;
  out.liftedShare = lifted;
  out.thirstyDays = thirsty;
}
