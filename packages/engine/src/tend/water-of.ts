import {
  efficiencyOf,
  evaporableMm,
  leachingShare,
  onionSaltTolerance,
  saltStress,
  saltYieldShare,
  soilSaltDsPerM,
  usualWatering,
} from '../bed/index.ts';
import type { SeasonDay } from '../calendar/index.ts';
import { dateSpread, percentiles } from '../season/index.ts';
import type { Ground, TendedCrop } from './tended-crop.ts';
import type { WaterAnswer, WaterDay, WaterToday } from './water-answer.ts';
import { type BedAccount, type BedMeans, followBed, toLetOut } from './water-balance.ts';
import { alwaysWatered, givenSoFar } from './water-given.ts';
import { waterSeasons } from './water-season.ts';

/** How a bed is watered. */
export type WaterOptions = {
  /** Share of the water let out that comes to the roots; null: that of the way of watering. */
  efficiency: number | null;
  /** Whether the days of the season in the middle are told. */
  days: boolean;
};

/** What a crop asks of water today, until its tops fall, and in a whole season. */
export function waterOf(crop: TendedCrop, options: WaterOptions): WaterAnswer {
  const { site, plan, ground, today, liftedOn } = crop;
  const watering = ground.watering ?? usualWatering;
  const efficiency = options.efficiency ?? efficiencyOf[watering];
  const salt = saltOf(ground.waterSaltDsPerM);
  const evaporable = evaporableMm(plan.soil);
  const means: BedMeans = {
    watering,
    efficiency,
    leachingShare: salt?.leachingShare ?? 0,
    saltFactor: salt?.factor ?? 1,
    readilyEvaporableMm: evaporable.readilyMm,
    evaporableMm: evaporable.totalMm,
  };
  const { given, assumed } = givenSoFar(crop);
  const now = today - plan.startDay;
  const seasonOf = waterSeasons(site, plan, liftedOn === null ? null : liftedOn - plan.startDay);
  const account: BedAccount = {
    rainMm: Number.NaN,
    givenMm: Number.NaN,
    depletionMm: Number.NaN,
    readilyMm: Number.NaN,
    dueOn: Number.NaN,
    followingOn: Number.NaN,
  };
  const told: Told[] = [];
  for (let season = 0; season < site.years; season++) {
    const bed = seasonOf(season);
    if (!bed) continue;
    followBed(bed, means, alwaysWatered, now, account);
    const needMm = account.givenMm;
    if (now > bed.from) followBed(bed, means, given, now, account);
    told.push({ ...account, season, needMm, stopsOn: bed.topsFall ? bed.to : Number.NaN });
  }
  const whole = wholeSeasons(told);
  const spread = (of: 'dueOn' | 'followingOn' | 'stopsOn') =>
    dateSpread(numbers(told.map((one) => one[of])), plan.startDay, site.years);
  const standing = told.filter(({ depletionMm }) => !Number.isNaN(depletionMm));
  const days: WaterDay[] = [];
  if (options.days && whole.length > 0) {
    const { season } = inTheMiddle(whole, ({ needMm }) => needMm);
    const bed = seasonOf(season);
    if (bed) followBed(bed, means, given, now, account, days, plan.startDay);
  }
  return {
    today: 2 * standing.length >= told.length ? todayOf(standing, means, ground) : null,
    next: spread('dueOn'),
    following: spread('followingOn'),
    stop: spread('stopsOn'),
    seasonMm:
      whole.length > 0
        ? {
            need: percentiles(whole.map(({ needMm }) => needMm)),
            rain: percentiles(whole.map(({ rainMm }) => rainMm)),
            given: percentiles(whole.map(({ givenMm }) => givenMm)),
          }
        : null,
    watering,
    efficiency,
    salt: salt && { yieldShare: salt.yieldShare, leachingShare: salt.leachingShare },
    assumed,
    days,
  };
}

/** What came of one season; NaN for a day that did not come. */
type Told = BedAccount & { season: number; needMm: number; stopsOn: SeasonDay };

const numbers = (values: number[]) => values.filter((value) => !Number.isNaN(value));

/**
 * The seasons by which a whole one is told: those in which tops fall, for who has onions that never ripen waters no
 * longer than the others; all where they fall in none.
 */
function wholeSeasons(told: Told[]): Told[] {
  const ripe = told.filter(({ stopsOn }) => !Number.isNaN(stopsOn));
  return ripe.length > 0 ? ripe : told;
}

/** The lower one of the middle, so that a bed is due today where it is in more than half of the seasons. */
function inTheMiddle(told: Told[], by: (one: Told) => number): Told {
  return [...told].sort((a, b) => by(a) - by(b))[(told.length - 1) >> 1];
}

function saltOf(waterDsPerM: number | null) {
  if (waterDsPerM === null) return null;
  const leaching = leachingShare(waterDsPerM, onionSaltTolerance);
  const soil = soilSaltDsPerM(waterDsPerM, leaching);
  return {
    leachingShare: leaching,
    yieldShare: saltYieldShare(soil, onionSaltTolerance),
    factor: saltStress(soil, onionSaltTolerance),
  };
}

/** The bed of the season in the middle by how far it is from asking for water. */
function todayOf(standing: Told[], means: BedMeans, { areaM2, flowLPerH }: Ground): WaterToday | null {
  if (standing.length === 0) return null;
  const { depletionMm, readilyMm } = inTheMiddle(standing, (one) => one.depletionMm - one.readilyMm);
  const litresPerM2 = toLetOut(depletionMm, means);
  const litresForBed = areaM2 === null ? null : litresPerM2 * areaM2;
  return {
    depletionMm,
    readilyAvailableMm: readilyMm,
    waterNow: depletionMm > readilyMm,
    litresPerM2,
    litresForBed,
    minutes: litresForBed === null || flowLPerH === null ? null : (litresForBed / flowLPerH) * 60,
  };
}
