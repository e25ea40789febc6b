import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  dayNumber,
  type MonthlyClimate,
  openSite,
  type Plan,
  planDefaults,
  runnerOf,
} from '../packages/engine/src/index.ts';
import type { Drivers } from '../packages/engine/src/season/drivers.ts';
import { grow } from '../packages/engine/src/season/grow.ts';
import { emptySeedling, raise } from '../packages/engine/src/season/nursery.ts';
import { emptyOutcome } from '../packages/engine/src/season/outcome.ts';
import { copyPlant, emptyPlant, type PlantState } from '../packages/engine/src/season/plant-state.ts';
import { calendarYear, driverIndex } from '../packages/engine/src/season/site.ts';
import { type Terms, termsOf } from '../packages/engine/src/season/terms.ts';
import { median, type Row } from './timing.ts';

const years = 30;
const repeats = 40;
const pairs = 21;
/** Rounding apart: C's compiler orders sums as it likes, and its exp and log differ in the last place. */
const agreement = 1e-11;

type Season = { plant: PlantState; terms: Terms };

/** What the loop came to, in the order of grow.c. */
const resultFields = 11;

/**
 * The daily loop against its port in C (grow.c), the same seasons in turns, by processor time. Throws where the two
 * part. Nothing where there is no compiler.
 *
 * @param program the port, compiled; null without a compiler
 */
export function growInCRows(climate: MonthlyClimate, program: string | null, folder: string): Row[] {
  if (program === null) return [];
  return [true, false].map((followsWater) => {
    const seasons = seasonsOf(climate, followsWater);
    const input = join(folder, 'seasons.bin');
    const output = join(folder, 'results.bin');
    writeFileSync(input, fileOf(seasons));
    const inC = () => {
      const { status } = spawnSync(program, [input, String(repeats), output]);
      if (status !== 0) throw new Error(`the port in C ended with ${status}`);
      return new Float64Array(new Uint8Array(readFileSync(output)).buffer);
    };
    compare(inC().subarray(1), seasons.flat());
    const ratios = Array.from({ length: pairs }, () => ownUs(seasons.flat()) / inC()[0]);
    return {
      what: `the daily loop against C, ${followsWater ? 'with' : 'without'} the bed's water`,
      value: median(ratios),
      unit: '×',
      limit: 1.3,
    };
  });
}

/** Seasons of one way of growing each, ready to start: from seed in autumn on rain, and the other ways in spring. */
function seasonsOf(climate: MonthlyClimate, followsWater: boolean): Season[][] {
  const site = openSite({ climate, years, seed: 1 });
  const day = (month: number) => dayNumber(2027, month, 10);
  const plans: Partial<Plan>[] = [
    { type: 'intermediate', start: 'direct-seed', startDay: day(10), water: 'rain' },
    { type: 'early-long', start: 'sets', startDay: day(3), cover: 'fleece' },
    { type: 'northern-long', start: 'raised-seedlings', startDay: day(2) },
    { type: 'intermediate', start: 'bought-transplants', startDay: day(4), water: 'rain' },
  ];
  return plans.map((own) => {
    const plan: Plan = { ...planDefaults, plantOutDay: null, ...own } as Plan;
    const { crop, table, nurseryTempC } = runnerOf(site, plan);
    const startYear = calendarYear(plan.startDay);
    const open = site.generated('none', startYear);
    const covered = site.generated(plan.cover, startYear);
    const photoAt = plan.startDay - table.firstDay;
    crop.followsWater = followsWater;
    return site.draws().flatMap((draw, year) => {
      const seedling = emptySeedling();
      const at = driverIndex(site, plan.startDay, year);
      crop.draw = draw;
      raise(plan, crop, open, covered, at, table.photoperiodH, photoAt, nurseryTempC, null, seedling);
      if (!seedling.emerged) return [];
      const terms = termsOf(crop, open, covered, at, table.photoperiodH, photoAt, seedling.day);
      return [{ plant: seedling.plant, terms }];
    });
  });
}

const outcome = emptyOutcome();
const plant = emptyPlant();

function growOne({ plant: from, terms }: Season): number {
  copyPlant(from, plant);
  outcome.onsetOn = 0;
  return grow(plant, terms, terms.beddedOn, terms.crop.lastDay, outcome, null);
}

/** Processor time of all seasons once, µs. */
function ownUs(seasons: readonly Season[]): number {
  const growAll = (times: number) => {
    for (let time = 0; time < times; time++) for (const season of seasons) growOne(season);
  };
  growAll(repeats / 5 + 1);
  const from = process.cpuUsage();
  growAll(repeats);
  const { user, system } = process.cpuUsage(from);
  return (user + system) / repeats;
}

function compare(inC: Float64Array, seasons: readonly Season[]): void {
  seasons.forEach((season, at) => {
    const day = growOne(season);
    const { leaves, green, shootG, bulbG, ripening, coldDays, aliveShare, liftedShare, thirstyDays } = plant;
    const own = [
      day,
      outcome.onsetOn,
      leaves,
      green,
      shootG,
      bulbG,
      ripening,
      coldDays,
      aliveShare,
      liftedShare,
    ];
    [...own, thirstyDays].forEach((value, field) => {
      const other = inC[at * resultFields + field];
      if (!(Math.abs(value - other) <= agreement * Math.max(1, Math.abs(value))))
        throw new Error(`season ${at}, result ${field}: ${value} here, ${other} in C`);
    });
  });
}

/** The seasons as grow.c reads them: numbers and columns in the order of its structures. */
function fileOf(plans: readonly Season[][]): Float64Array {
  const numbers = plans.flatMap((seasons) => [headOf(seasons), ...seasons.map(seasonOf)]);
  return Float64Array.from([plans.length, ...numbers.flat()]);
}

function headOf(seasons: readonly Season[]): number[] {
  const [{ terms }] = seasons;
  const { crop, open, covered, photoperiodH } = terms;
  const { growth, type } = crop;
  const air = (of: Drivers, own: Float64Array[]) =>
    [of.tempMeanC, of.tempMinC, of.rainMm, of.soilMeanC, of.wetness, of.lifeTT, of.leafTT, of.growthTT]
      .concat(of.growthLight, own, terms.referenceEt)
      .flatMap((column) => [...column]);
  return [
    [open.days, photoperiodH.length, seasons.length],
    [crop.youngG, crop.standPerM2, crop.densityHaste, crop.lightShare, Number(crop.followsWater)],
    [Number(crop.covered), crop.coverShelterC, Number(crop.watered), crop.availableMmPerM, crop.readilyShare],
    [crop.lastDay, growth.firstLeavesFactor, growth.leafLifeTT, growth.shootPerLeafArea, growth.growthRate],
    [growth.radiationUseGMJ, growth.frostHeaveLoss, growth.extinction, growth.bulbingRate],
    [growth.bulbingLossPerDay, growth.boltingSizeSpan, growth.photoperiodRampH],
    [type.boltingSizeG, type.minimumLeaves, type.ripeningPhotoperiodSlope],
    [...crop.areaTotals, ...photoperiodH],
    air(open, [terms.coldOpen, terms.ripenOpen, terms.warmthOpen]),
    air(covered, [terms.coldCovered, terms.ripenCovered, terms.warmthCovered]),
  ].flat();
}

function seasonOf({ plant, terms }: Season): number[] {
  const { at, photoAt, beddedOn, phyllochron, criticalH, competenceTT, ripeningTT } = terms;
  return [
    [at, photoAt, beddedOn, phyllochron, criticalH, competenceTT, ripeningTT],
    [
      plant.leaves,
      plant.green,
      plant.dead,
      plant.lifeTT,
      plant.age,
      plant.rootingTT,
      plant.shootG,
      plant.bulbG,
    ],
    [plant.bulbing, Number(plant.hasBulb), plant.ripening, plant.turnBack, Number(plant.reverted)],
    [plant.coldDays, plant.storeColdDays, plant.coldPace, plant.recentC, plant.aliveShare, plant.liftedShare],
    [plant.snowMm, plant.depletionMm, plant.thirstyDays, ...plant.leafBorn, ...plant.recentCold],
  ].flat();
}
