import { climateYearDays, type SeasonDay } from '../calendar/index.ts';
import {
  ageNeed,
  boltingSizeFactor,
  bulbMassG,
  crowdedPace,
  degreesAbove,
  fieldFactor,
  glazingShare,
  growthTemperatureFactor,
  interceptedShare,
  lampMJPerHour,
  nextSnowMm,
  nightKillShare,
  normalSeedlingShare,
  nurseryPerM2,
  photoperiodFactor,
  ramp,
  setColdDays,
  snowShelterC,
  startWays,
  youngLeafArea,
} from '../plant/index.ts';
import type { Crop } from './crop.ts';
import type { Drivers } from './drivers.ts';
import type { Plan } from './plan.ts';
import { beginPlant, emptyPlant, type PlantState } from './plant-state.ts';

/** A plan's plant on the day it begins to grow in its bed. Days count from the start of the plan. */
export type Seedling = {
  /** False where the seed never came up. */
  emerged: boolean;
  emergedOn: SeasonDay;
  emergedShare: number;
  /** Day on which it stands in its bed. */
  day: SeasonDay;
  plant: PlantState;
};

export function emptySeedling(): Seedling {
  return { emerged: true, emergedOn: 0, emergedShare: 1, day: 0, plant: emptyPlant() };
}

/** A nursery stands outdoors, as a seedbed, where the climate at sowing is at least this warm, °C; else indoors. */
export const seedbedFromC = 10;
/** Indoor nursery where nothing else is said, °C (Iowa State Extension: 13–18 °C). */
export const indoorNurseryC = 15;

/** Seedlings go out into a bed at least this warm, with this many leaves made or after so many weeks; until then they stand and wait. */
export const plantingOut = { leaves: 2.5, bedC: 7, latestWeeks: 12 } as const;

/** Ground temperature from which sets die before they have sprouted, °C (memory: sets lie through the winters of Kyiv, not of Winnipeg). */
const dormantKillC = -8;

/** Days over which the warmth of the bed is judged before planting out. */
const bedMemoryDays = 10;

/** Fills `seedling` for a plan whose start day has index `at` in the drivers and `photoAt` in the photoperiods. */
export function raise(
  plan: Plan,
  crop: Crop,
  open: Drivers,
  covered: Drivers,
  at: number,
  photoperiodH: Float64Array,
  photoAt: number,
  nurseryTempC: number | null,
  plantOutAfter: number | null,
  seedling: Seedling,
): void {
  const { growth } = crop;
  const { plant } = seedling;
  beginPlant(plant);
  plant.coldPace = startWays[plan.start].coldPace;
  plant.rootingTT = crop.rootingTT;
  seedling.emerged = true;
  seedling.emergedOn = 0;
  seedling.emergedShare = 1;
  seedling.day = 0;
  const slowFirst = growth.firstLeavesFactor * growth.phyllochron;
  switch (plan.start) {
    case 'bought-transplants':
      plant.leaves = growth.transplantLeaves;
      plant.age =
        crop.draw.phyllochronFactor * (3 * slowFirst + (growth.transplantLeaves - 3) * growth.phyllochron);
      plant.shootG = growth.transplantG;
      break;
    case 'sets':
      sprout(plan, crop, open, at, isPastSummer(photoperiodH, photoAt), seedling);
      break;
    case 'direct-seed':
      emergeInBed(crop, crop.covered ? covered : open, at, seedling);
      break;
    case 'raised-seedlings':
      raiseSeedlings(plan, crop, open, at, photoperiodH, photoAt, nurseryTempC, plantOutAfter, seedling);
  }
  plant.green = plant.leaves;
  plant.recentC = open.tempMeanC[at + seedling.day];
}

/** Days back to which a day's length is compared: it is shorter from a month after the longest day on. */
const twoMonths = 60;

/** From a month after the longest day to a month after the shortest. */
function isPastSummer(photoperiodH: Float64Array, photoAt: number): boolean {
  // a year on stands for the days before the table begins
  return photoperiodH[photoAt] < photoperiodH[photoAt + climateYearDays - twoMonths];
}

/** @param isFresh planted past summer: sets of that summer's lifting, which have met no winter in a store */
function sprout(
  plan: Plan<'sets'>,
  crop: Crop,
  open: Drivers,
  at: number,
  isFresh: boolean,
  seedling: Seedling,
): void {
  const { growth, type } = crop;
  const { plant } = seedling;
  let warmth = 0;
  let day = 0;
  let snowMm = 0;
  for (; warmth < growth.setSproutTT && day < crop.lastDay; day++) {
    const i = at + day;
    if (open.tempMinC[i] < 0 || snowMm > 0) {
      const groundC = (open.tempMinC[i] + open.soilMeanC[i]) / 2 + snowShelterC(snowMm);
      plant.aliveShare *= 1 - nightKillShare(groundC, dormantKillC);
      snowMm = nextSnowMm(snowMm, open.rainMm[i], open.tempMeanC[i]);
    }
    warmth += open.leafTT[i];
  }
  seedling.emerged = warmth >= growth.setSproutTT;
  seedling.emergedOn = day;
  seedling.day = day;
  plant.leaves = growth.setLeaves;
  // A set is a plant that was old enough once; only its new leaves count.
  plant.age = growth.competenceTT * crop.draw.phyllochronFactor;
  plant.shootG = growth.setG * (bulbMassG(plan.setSizeMm) / bulbMassG(16)) ** (1 / 3);
  plant.storeColdDays = setColdDays(
    plan.setSizeMm,
    isFresh ? 'warm' : plan.setStore,
    type.vernalHalfD,
    type.vernalSpreadD,
  );
  plant.coldDays = plant.storeColdDays;
}

function emergeInBed(crop: Crop, bed: Drivers, at: number, seedling: Seedling): void {
  const { growth } = crop;
  let warmth = 0;
  let soil = 0;
  let day = 0;
  while (warmth < growth.emergenceTT && day < crop.lastDay) {
    warmth += bed.soilTT[at + day];
    soil += bed.soilMeanC[at + day];
    day++;
  }
  seedling.emerged = warmth >= growth.emergenceTT;
  seedling.emergedOn = day;
  seedling.emergedShare = day === 0 ? 0 : normalSeedlingShare(soil / day) * fieldFactor.bed;
  seedling.day = day;
}

function raiseSeedlings(
  plan: Plan<'raised-seedlings'>,
  crop: Crop,
  open: Drivers,
  at: number,
  photoperiodH: Float64Array,
  photoAt: number,
  nurseryTempC: number | null,
  plantOutAfter: number | null,
  seedling: Seedling,
): void {
  const { growth, type, draw } = crop;
  const phyllochron = growth.phyllochron * draw.phyllochronFactor;
  const criticalH = type.criticalPhotoperiodH + draw.criticalShiftH;
  const competenceTT = growth.competenceTT * type.competenceShare * draw.phyllochronFactor;
  const latest = plantOutAfter ?? crop.lastDay;
  const cold = open.cold(type.vernalCeilingC);
  const indoors = nurseryTempC !== null;
  const indoorSoilTT = indoors ? degreesAbove(nurseryTempC, growth.emergenceBaseC, growth.emergenceCapC) : 0;
  const indoorLeafTT = indoors ? degreesAbove(nurseryTempC, growth.leafBaseC, growth.leafCapC) : 0;
  const indoorGrowthTT = indoors ? degreesAbove(nurseryTempC, growth.growthBaseC, growth.leafCapC) : 0;
  const indoorBulbing = indoors ? ramp(nurseryTempC, growth.bulbingBaseC, growth.bulbingFullC) : 0;
  const indoorLight = indoors ? growthTemperatureFactor(nurseryTempC) : 0;
  const lampMJ = plan.lampHours === null ? 0 : lampMJPerHour * plan.lampHours;
  const bulbingTemp = open.bulbingTemp(growth.bulbingBaseC, growth.bulbingFullC);

  let warmth = 0;
  let soil = 0;
  let emergedOn = 0;
  let { leaves, age, shootG, bulbing, coldDays } = seedling.plant;
  let bedC = open.tempMeanC[at];
  let day = 0;
  for (; day < latest; day++) {
    const i = at + day;
    bedC += (open.tempMeanC[i] - bedC) / bedMemoryDays;
    const isDue = leaves >= plantingOut.leaves || day >= 7 * plantingOut.latestWeeks;
    if (plantOutAfter === null && isDue && bedC >= plantingOut.bedC) break;
    if (warmth < growth.emergenceTT) {
      warmth += indoors ? indoorSoilTT : open.soilTT[i];
      soil += indoors ? nurseryTempC : open.soilMeanC[i];
      emergedOn = day + 1;
      continue;
    }
    const leafTT = (indoors ? indoorLeafTT : open.leafTT[i]) * crowdedPace(leaves, growth.nurseryCrowdLeaves);
    leaves += leafTT / ((leaves < 3 ? growth.firstLeavesFactor : 1) * phyllochron);
    age += leafTT;
    const byAge = shootG * growth.growthRate * (indoors ? indoorGrowthTT : open.growthTT[i]);
    const light = indoors ? (glazingShare * open.usedLight[i] + lampMJ) * indoorLight : open.growthLight[i];
    const caught = interceptedShare(growth.extinction * youngLeafArea(shootG) * nurseryPerM2 * 1e-4);
    const byLight = (growth.radiationUseGMJ * light * caught) / nurseryPerM2;
    shootG += byAge < byLight ? byAge : byLight;
    if (!indoors) coldDays += cold[i] * boltingSizeFactor(shootG, type.boltingSizeG, growth.boltingSizeSpan);
    const P = plan.lampHours ?? photoperiodH[photoAt + day];
    if (P > criticalH && age >= competenceTT * ageNeed(P - criticalH) && leaves >= type.minimumLeaves)
      bulbing +=
        growth.bulbingRate *
        photoperiodFactor(P, criticalH, growth.photoperiodRampH) *
        (indoors ? indoorBulbing : bulbingTemp[i]);
    bulbing = Math.max(0, bulbing - growth.bulbingLossPerDay);
  }
  seedling.emerged = warmth >= growth.emergenceTT;
  seedling.emergedOn = emergedOn;
  seedling.emergedShare = emergedOn === 0 ? 0 : normalSeedlingShare(soil / emergedOn) * fieldFactor.tray;
  seedling.day = day;
  const { plant } = seedling;
  plant.leaves = leaves;
  plant.age = age;
  plant.shootG = shootG;
  // Bulbs that begin in the tray go on in the bed from just short of onset.
  plant.bulbing = Math.min(bulbing, 0.99);
  plant.coldDays = coldDays;
}
