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
  boltingSizeFactor,
  bulbShare,
  canopyHaste,
  coverUse,
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
import type { Outcome } from './outcome.ts';
import { idleColdDays, type PlantState } from './plant-state.ts';
import { hardeningDays, stalkDays, standLost } from './steps/index.ts';
import type { Terms } from './terms.ts';
import type { DayTrace } from './trace.ts';

const mostLeaves = leafLimit - 1;

/** Short, so that a season goes on in the best code there is at the next call, not in what was made for one long loop. */
const stretchDays = 16;

/**
 * Grows `plant` from day `from` on until its season is over, or to the morning of day `until`.
 * `out` is told of the start of bulbs, `trace` of every day on which the plant stood.
 *
 * @returns the day on which the season was over, else `until`
 */
export function grow(
  plant: PlantState,
  terms: Terms,
  from: number,
  until: number,
  out: Outcome,
  trace: DayTrace | null,
): number {
  let day = from;
  while (day < until) {
    const pause = Math.min(day + stretchDays, until);
    day = growStretch(plant, terms, day, pause, out, trace);
    if (day < pause) break;
  }
  return day;
}

/**
 * The steps of `growDay` laid flat in one body, which takes little more than half the time. A test holds it to them
 * bit for bit; change them first.
 */
function growStretch(
  plant: PlantState,
  terms: Terms,
  from: number,
  until: number,
  out: Outcome,
  trace: DayTrace | null,
): number {
  const { crop, open, covered, at, photoperiodH, photoAt, phyllochron, criticalH } = terms;
  const { coldOpen, coldCovered, ripenOpen, ripenCovered, warmthOpen, warmthCovered, referenceEt } = terms;
  const { competenceTT, ripeningTT, growthFactor } = terms;
  const { growth, type, areaTotals, youngG, standPerM2, densityHaste, lightShare, followsWater } = crop;
  const { fullColdG, coverShelterC, watered, availableMmPerM, readilyShare, lastDay } = crop;
  const isEverCovered = crop.covered;
  const coverEnds = terms.beddedOn + coverUse.days;
  const stalksUntil = lastDay - stalkDays;
  const { firstLeavesFactor, leafLifeTT, shootPerLeafArea, growthRate, radiationUseGMJ } = growth;
  const { extinction, bulbingRate, bulbingLossPerDay, boltingSizeSpan } = growth;
  const { boltingSizeG, minimumLeaves, dryMatterShare } = type;
  const openMeanC = open.tempMeanC;
  const openMinC = open.tempMinC;
  const { rainMm, soilMeanC } = open;
  const leastAreaPerG = youngLeafArea(youngG) / youngG;
  const { leafBorn, recentCold, coldPace, storeColdDays } = plant;

  let { leaves, green, dead, lifeTT, age, rootingTT, shootG, bulbG, bulbing, hasBulb, ripening } = plant;
  let { turnBack, coldDays, recentC, aliveShare, liftedShare, snowMm, depletionMm, thirstyDays } = plant;
  let reverted = false;
  let made = Math.floor(leaves);
  let day = from;
  for (; day < until; day++) {
    const i = at + day;
    const outsideMinC = openMinC[i];
    const isCovered = isEverCovered && (day < coverEnds || outsideMinC < coverUse.frostBelowC);
    const air = isCovered ? covered : open;
    const meanC = isCovered ? covered.tempMeanC[i] : openMeanC[i];
    const P = photoperiodH[photoAt + day];

    // winter
    if (outsideMinC < 0 || snowMm > 0) {
      const crownC = (outsideMinC + soilMeanC[i]) / 2;
      const sheltered = crownC + (isCovered ? coverShelterC : 0) + snowShelterC(snowMm);
      if (sheltered < noHarmAboveC) {
        aliveShare *= 1 - nightKillShare(sheltered, killingTempC(leaves, hardening(recentC)));
        if (aliveShare < standLost) {
          aliveShare = 0;
          break;
        }
      }
      if (snowMm === 0 && !isCovered) {
        const lost =
          aliveShare * heavedShare(outsideMinC, meanC, open.wetness[i], shootG, growth.frostHeaveLoss);
        aliveShare -= lost;
        liftedShare += lost;
      }
      snowMm = nextSnowMm(snowMm, rainMm[i], openMeanC[i]);
    }
    recentC += (meanC - recentC) / hardeningDays;

    // leaves
    lifeTT += air.lifeTT[i];
    const isRooted = rootingTT <= 0;
    const leafTT = air.leafTT[i];
    if (isRooted) {
      if (ripening < lastLeavesRipening && leaves < mostLeaves) {
        const pace = (leaves < 3 ? firstLeavesFactor : 1) * phyllochron;
        leaves += (leafTT / pace) * (hasBulb ? lastLeavesRate : 1);
        if (leaves > mostLeaves) leaves = mostLeaves;
        while (made + 1 <= leaves) leafBorn[++made] = lifeTT;
      }
      age += leafTT;
    } else rootingTT -= leafTT;
    while (dead < made && lifeTT - leafBorn[dead + 1] > leafLifeTT) dead++;
    green = leaves - dead;
    if (green > mostGreenLeaves) green = mostGreenLeaves;

    // canopy
    const gone = leaves - green;
    const goneWhole = Math.floor(gone);
    const goneArea = areaTotals[goneWhole];
    const madeArea = areaTotals[made];
    const standing =
      madeArea +
      (areaTotals[made + 1] - madeArea) * (leaves - made) -
      (goneArea + (areaTotals[goneWhole + 1] - goneArea) * (gone - goneWhole));
    // a young plant's area lies above the chord to its end, so most days need no logarithm
    const young = shootG * leastAreaPerG >= standing ? standing : youngLeafArea(shootG);
    const areaCm2 = (young < standing ? young : standing) * greenShare(ripening);
    const lai = areaCm2 * standPerM2 * 1e-4;
    const intercepted = interceptedShare(extinction * lai);

    // water
    let stress = 1;
    if (followsWater) {
      const et = referenceEt[i];
      const cropEt = et * onionCropCoefficient(intercepted, ripening);
      const available = availableMmPerM * onionRootDepthM(leaves);
      stress = waterStress(depletionMm, available, adjustedDepletionShare(readilyShare, cropEt));
      if (stress < 1) {
        thirstyDays++;
        if (watered) {
          depletionMm = 0;
          stress = 1;
        }
      }
      depletionMm = nextDepletion(depletionMm, effectiveRainMm(rainMm[i], et), cropEt * stress, available);
    }

    // gain
    if (isRooted) {
      const byLight = (radiationUseGMJ * air.growthLight[i] * lightShare * intercepted) / standPerM2;
      const byAge = (shootG + bulbG) * growthRate * air.growthTT[i];
      const made = (byAge < byLight ? byAge : byLight) * stress;
      const gain = made * wetSpellFactor(air.wetness[i], meanC) * growthFactor;
      if (hasBulb) {
        const toBulb = bulbShare(ripening) * gain;
        bulbG += toBulb;
        shootG += gain - toBulb;
      } else {
        const room = standing * shootPerLeafArea;
        const most = room > youngG ? room : youngG;
        const grown = shootG + gain;
        if (grown < most) shootG = grown;
        else if (most > shootG) shootG = most;
      }
    }

    if (hasBulb) {
      // ripening
      ripening +=
        ((isCovered ? ripenCovered : ripenOpen)[i] / ripeningTT) *
        ripeningPhotoperiodFactor(P, criticalH, type.ripeningPhotoperiodSlope) *
        densityHaste;
      if (ripening < reversal.beforeRipening) {
        const isBack = P < criticalH - reversal.shortfallH || meanC < reversal.coldC;
        turnBack = isBack ? turnBack + 1 : turnBack > 0 ? turnBack - 1 : 0;
        if (turnBack > reversal.days) {
          reverted = true;
          break;
        }
      }
      if (trace) trace.put(day, leaves, green, shootG, bulbG / dryMatterShare, bulbing, ripening);
      if (ripening >= 1) break;
      continue;
    }

    // cold
    const chill = (isCovered ? coldCovered : coldOpen)[i];
    const slot = day % idleColdDays;
    recentCold[slot] = 0;
    if (chill > 0 && shootG > boltingSizeG && day < stalksUntil) {
      // a big plant needs no logarithm
      const bySize = shootG >= fullColdG ? 1 : boltingSizeFactor(shootG, boltingSizeG, boltingSizeSpan);
      recentCold[slot] = coldPace * chill * bySize;
      coldDays += recentCold[slot];
    }
    if (meanC > warmthUndoes.aboveC && coldDays > storeColdDays) {
      coldDays -= warmthUndoes.days;
      if (coldDays < storeColdDays) coldDays = storeColdDays;
    }

    // bulbing
    if (isRooted || P < criticalH) {
      if (P > criticalH && age >= competenceTT * ageNeed(P - criticalH) && leaves >= minimumLeaves)
        bulbing +=
          bulbingRate *
          photoperiodFactor(P, criticalH, growth.photoperiodRampH) *
          (isCovered ? warmthCovered : warmthOpen)[i] *
          canopyHaste(lai);
      bulbing = bulbing > bulbingLossPerDay ? bulbing - bulbingLossPerDay : 0;
    }
    if (bulbing >= 1) {
      hasBulb = true;
      bulbing = 1;
      for (let back = 0; back < idleColdDays; back++) coldDays -= recentCold[back];
      if (coldDays < storeColdDays) coldDays = storeColdDays;
      out.onsetOn = day;
      out.leavesMade = leaves;
      out.leavesGreen = green;
      out.shootG = shootG;
      out.photoperiodH = P;
    }
    if (trace) trace.put(day, leaves, green, shootG, 0, bulbing, 0);
  }

  plant.leaves = leaves;
  plant.green = green;
  plant.dead = dead;
  plant.lifeTT = lifeTT;
  plant.age = age;
  plant.rootingTT = rootingTT;
  plant.shootG = shootG;
  plant.bulbG = bulbG;
  plant.bulbing = bulbing;
  plant.hasBulb = hasBulb;
  plant.ripening = ripening;
  plant.turnBack = turnBack;
  plant.reverted = reverted;
  plant.coldDays = coldDays;
  plant.recentC = recentC;
  plant.aliveShare = aliveShare;
  plant.liftedShare = liftedShare;
  plant.snowMm = snowMm;
  plant.depletionMm = depletionMm;
  plant.thirstyDays = thirstyDays;
  return day;
}
