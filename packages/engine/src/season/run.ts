import { climateDayOf, type DayNumber, type SeasonDay } from '../calendar/index.ts';
import { type Crop, cropOf } from './crop.ts';
import { type Draw, noDraw } from './draws.ts';
import type { Drivers } from './drivers.ts';
import { endSeason } from './end-season.ts';
import { grow } from './grow.ts';
import { emptySeedling, indoorNurseryC, raise, type Seedling, seedbedFromC } from './nursery.ts';
import { emptyOutcome, type Outcome, stage } from './outcome.ts';
import { type Plan, plantOutDayOf } from './plan.ts';
import { copyPlant, emptyPlant, type PlantState } from './plant-state.ts';
import { seasonEnd } from './season-end.ts';
import { calendarYear, type DayTable, driverIndex, type Site } from './site.ts';
import { type Terms, termsOf } from './terms.ts';
import type { DayTrace } from './trace.ts';

/** A plan bound to a site; runs one season after another without allocating. */
export type Runner = {
  crop: Crop;
  /** Nursery temperature in force: degrees indoors, or null for a seedbed outdoors and where there is no nursery. */
  nurseryTempC: number | null;
  table: DayTable;
  /** Starts at another day with the rest of the plan unchanged. */
  moveTo: (startDay: DayNumber, plantOutDay: DayNumber | null) => void;
  /** One season of the mean climate, without a draw; the thirsty days of a watered bed are not counted. */
  meanSeason: (trace?: DayTrace | null) => Outcome;
  /** One season of weather year `year`. The outcome is reused by the next run. */
  season: (year: number, trace?: DayTrace | null) => Outcome;
  /**
   * One season of weather year `year` from a plant as it stood on the morning of `day`, in days from the start: what is
   * seen in a bed goes on from there. Whatever came before is not told: days of emergence and planting are the plan's.
   */
  seasonFrom: (year: number, plant: PlantState, day: SeasonDay) => Outcome;
  /** The plant of weather year `year` on the morning of `day`; null where none stands in the bed, or its season is over. */
  plantOn: (year: number, day: SeasonDay) => PlantState | null;
  /** The same without the count of thirsty days of a watered bed, which takes a third of the time. */
  quickSeason: (year: number, trace?: DayTrace | null) => Outcome;
};

/** A plan made ready to be run at a site, season by season. It holds one outcome, which the next run writes over. */
export function runnerOf(site: Site, plan: Plan): Runner {
  const crop = cropOf(plan, site.values, site.longestDayH);
  const outcome = emptyOutcome();
  const seedling = emptySeedling();
  let startDay = plan.startDay;
  let startYear = calendarYear(startDay);
  let plantOutAfter: number | null = null;
  const nurseryOn = (day: DayNumber) =>
    plan.start === 'raised-seedlings' ? (plan.nurseryTempC ?? usualNursery(site, day)) : null;
  const runner: Runner = {
    crop,
    nurseryTempC: nurseryOn(startDay),
    table: site.dayTable(startYear),
    moveTo(day, plantOutDay) {
      startDay = day;
      startYear = calendarYear(day);
      plantOutAfter = plantOutDay === null ? null : Math.max(1, plantOutDay - day);
      runner.table = site.dayTable(startYear);
      crop.lastDay = seasonEnd(climateDayOf(day), site.climate.latitudeDeg);
      runner.nurseryTempC = nurseryOn(day);
    },
    meanSeason(trace = null) {
      crop.followsWater = !crop.watered;
      return run(site.mean('none'), site.mean(plan.cover), climateDayOf(startDay), noDraw, trace);
    },
    season(year, trace = null) {
      crop.followsWater = true;
      return weatherSeason(year, trace);
    },
    seasonFrom(year, plant, day) {
      crop.followsWater = true;
      const terms = raised(...weatherOf(year));
      if (!terms) return outcome;
      copyPlant(plant, seedling.plant);
      return grown(seedling.plant, terms, Math.max(day, seedling.day), null);
    },
    plantOn(year, day) {
      crop.followsWater = true;
      const terms = raised(...weatherOf(year));
      if (!terms || day < seedling.day || day > crop.lastDay) return null;
      const plant = emptyPlant();
      copyPlant(seedling.plant, plant);
      if (grow(plant, terms, seedling.day, day, outcome, null) < day) return null;
      return plant;
    },
    quickSeason(year, trace = null) {
      crop.followsWater = !crop.watered;
      return weatherSeason(year, trace);
    },
  };
  const weatherOf = (year: number) =>
    [
      site.generated('none', startYear),
      site.generated(plan.cover, startYear),
      driverIndex(site, startDay, year),
      site.draws()[year],
    ] as const;
  const weatherSeason = (year: number, trace: DayTrace | null) => run(...weatherOf(year), trace);
  /** Raises the seedling; gives the terms of its season, null where it never stands in its bed. */
  const raised = (open: Drivers, covered: Drivers, at: number, draw: Draw): Terms | null => {
    crop.draw = draw;
    const photoAt = startDay - runner.table.firstDay;
    const photoperiodH = runner.table.photoperiodH;
    raise(plan, crop, open, covered, at, photoperiodH, photoAt, runner.nurseryTempC, plantOutAfter, seedling);
    begin(outcome, seedling);
    if (!seedling.emerged || seedling.day >= crop.lastDay) return null;
    return termsOf(crop, open, covered, at, photoperiodH, photoAt, seedling.day);
  };
  const grown = (plant: PlantState, terms: Terms, from: SeasonDay, trace: DayTrace | null): Outcome => {
    endSeason(plant, terms, grow(plant, terms, from, crop.lastDay, outcome, trace), outcome);
    return outcome;
  };
  const run = (open: Drivers, covered: Drivers, at: number, draw: Draw, trace: DayTrace | null): Outcome => {
    const terms = raised(open, covered, at, draw);
    return terms ? grown(seedling.plant, terms, seedling.day, trace) : outcome;
  };
  runner.moveTo(plan.startDay, plantOutDayOf(plan));
  return runner;
}

/** Outdoors in a seedbed where the climate at sowing is warm enough, else indoors. */
function usualNursery(site: Site, day: DayNumber): number | null {
  return site.mean('none').tempMeanC[climateDayOf(day)] >= seedbedFromC ? null : indoorNurseryC;
}

function begin(outcome: Outcome, seedling: Seedling): void {
  outcome.reached = seedling.emerged ? stage.planted : stage.started;
  outcome.emergedOn = seedling.emergedOn;
  outcome.plantedOn = seedling.day;
  outcome.leavesPlanted = seedling.plant.leaves;
  outcome.onsetOn = 0;
  outcome.fellOn = 0;
  outcome.reverted = false;
  outcome.leavesMade = 0;
  outcome.leavesGreen = 0;
  outcome.shootG = 0;
  outcome.photoperiodH = 0;
  outcome.bulbDryG = 0;
  outcome.coldDays = 0;
  outcome.boltedShare = 0;
  outcome.aliveShare = 1;
  outcome.liftedShare = 0;
  outcome.emergedShare = seedling.emergedShare;
  outcome.thirstyDays = 0;
}
