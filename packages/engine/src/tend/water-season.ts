import {
  adjustedDepletionShare,
  basalInClimate,
  climateTerm,
  heightFactor,
  largestCoefficient,
  lowestHumidityPct,
  onionBasalCoefficient,
  onionCropCoefficient,
  onionHeightM,
  onionRootDepthM,
  windAt2m,
} from '../bed/index.ts';
import { climateDayOf, climateYearDays, monthOfClimateDay, type SeasonDay } from '../calendar/index.ts';
import type { MonthlyClimate } from '../climate/index.ts';
import { startWays } from '../plant/index.ts';
import {
  calendarYear,
  canopyOf,
  dayTrace,
  driverIndex,
  longestSeason,
  type Plan,
  runnerOf,
  type Site,
  stage,
} from '../season/index.ts';
import { topsBeginDays } from './tops-begin.ts';

/** What a crop asks of its bed in one season, day by day from the start of the plan. Filled in place. */
export type WaterSeason = {
  /** Sowing, or planting in the bed, and the day from which it is watered no more. */
  from: SeasonDay;
  to: SeasonDay;
  /** Whether tops begin to fall on the last. */
  topsFall: boolean;
  /** Weather, with the index of the start day in it. */
  rainMm: Float64Array;
  referenceEt: Float64Array;
  at: number;
  /** Share of the ground under leaves, Kcb and Kc max. */
  cover: Float64Array;
  basal: Float64Array;
  largest: Float64Array;
  /** Water in reach of the roots, and what of it is drawn without thirst, mm. */
  availableMm: Float64Array;
  readilyMm: Float64Array;
};

/**
 * Prepares the seasons of a plan at a site: told a season's number, fills what its crop asks of the bed; null where none
 * comes to stand in it. What is drawn without thirst goes by the evaporation of a usual day of that time of year, which
 * is what a grower can know.
 */
export function waterSeasons(
  site: Site,
  plan: Plan,
  liftedOn: SeasonDay | null,
): (season: number) => WaterSeason | null {
  const runner = runnerOf(site, plan);
  const { crop } = runner;
  const trace = dayTrace(longestSeason + 1);
  const weather = site.generated('none', calendarYear(plan.startDay));
  const column = () => new Float64Array(longestSeason + 1);
  const cover = column();
  const basal = column();
  const largest = column();
  const availableMm = column();
  const readilyMm = column();
  const usualEt = site.mean('none').referenceEt();
  const startsOn = climateDayOf(plan.startDay);
  const terms = climateTerms(site.climate);
  const term = column().map((_, day) => terms[monthOfClimateDay((startsOn + day) % climateYearDays)]);
  const isBedded = !startWays[plan.start].standsInTrays;
  const leafy = { leaves: 0.5, green: 0.5, shootG: 0.5, ripening: 0.5 };
  const told: WaterSeason = {
    from: 0,
    to: 0,
    topsFall: false,
    rainMm: weather.rainMm,
    referenceEt: weather.referenceEt(),
    at: 0,
    cover,
    basal,
    largest,
    availableMm,
    readilyMm,
  };
  const fill = (day: SeasonDay, leaves: number, ripening: number, under: number, bare: boolean) => {
    const height = heightFactor(onionHeightM(under));
    const kcb = bare ? 0 : basalInClimate(onionBasalCoefficient(under, ripening), term[day], height);
    const usualCropEt = usualEt[startsOn + day] * onionCropCoefficient(under, ripening);
    const available = crop.availableMmPerM * onionRootDepthM(leaves);
    cover[day] = under;
    basal[day] = kcb;
    largest[day] = largestCoefficient(kcb, term[day], height);
    availableMm[day] = available;
    readilyMm[day] = available * adjustedDepletionShare(crop.readilyShare, usualCropEt);
  };
  return (season) => {
    trace.length = 0;
    const { reached, plantedOn, fellOn } = runner.quickSeason(season, trace);
    if (trace.length === 0) return null;
    told.at = driverIndex(site, plan.startDay, season);
    told.from = isBedded ? 0 : plantedOn;
    const stops = reached === stage.fallen ? Math.max(told.from, fellOn - topsBeginDays) : trace.length;
    told.to = liftedOn === null ? stops : Math.min(stops, liftedOn);
    told.topsFall = reached === stage.fallen && told.to === stops;
    for (let day = told.from; day < plantedOn; day++) fill(day, 0, 0, 0, true);
    for (let day = plantedOn; day < told.to; day++) {
      leafy.leaves = trace.leavesMade[day];
      leafy.green = trace.leavesGreen[day];
      leafy.shootG = trace.shootG[day];
      leafy.ripening = trace.ripening[day];
      fill(day, leafy.leaves, leafy.ripening, canopyOf(leafy, runner).intercepted, false);
    }
    return told;
  };
}

/** What wind and dry air add to coefficients, by months. */
function climateTerms(climate: MonthlyClimate): Float64Array {
  const { tempMeanC, tempRangeC, relativeHumidityPct, wind10mMs } = climate;
  return Float64Array.from(tempMeanC, (mean, month) => {
    const half = tempRangeC[month] / 2;
    const lowest = lowestHumidityPct(mean - half, mean + half, relativeHumidityPct[month]);
    return climateTerm(windAt2m(wind10mMs[month], 10), lowest);
  });
}
