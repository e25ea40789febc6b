import {
  evaporationCoefficient,
  evaporationReduction,
  exposedShare,
  type WateringWay,
  waterStress,
  wettedShare,
} from '../bed/index.ts';
import type { DayNumber, SeasonDay } from '../calendar/index.ts';
import type { WaterDay } from './water-answer.ts';
import type { GivenSoFar } from './water-given.ts';
import type { WaterSeason } from './water-season.ts';

/** How a bed takes and is given water. */
export type BedMeans = {
  watering: WateringWay;
  /** Share of what is let out that comes to the roots, and of that what is meant to run through. */
  efficiency: number;
  leachingShare: number;
  /** Stress by salt, 1: none. */
  saltFactor: number;
  /** Evaporated from bare ground before it slows down, and in all, mm. */
  readilyEvaporableMm: number;
  evaporableMm: number;
};

/** What became of a bed's water in one season, filled in place. */
export type BedAccount = {
  rainMm: number;
  givenMm: number;
  /** On the day asked about, once what was noted of it is given; NaN where the crop is not in its bed. */
  depletionMm: number;
  readilyMm: number;
  /** The first and the second day from then on which it asks for water; NaN: none. */
  dueOn: SeasonDay;
  followingOn: SeasonDay;
};

/** Rain that wets all the ground anew, where drip had wetted a part, mm a day (memory: FAO-56, 3–4 mm). */
const wettingRainMm = 3;

/** Let out to make good what a bed is short of, mm: more by what goes beside and by what washes salt through. */
export function toLetOut(shortMm: number, { efficiency, leachingShare }: BedMeans): number {
  return shortMm / (efficiency * (1 - leachingShare));
}

/**
 * Follows a bed through a season by the dual crop coefficient (FAO-56 Eq. 69, 71–80, 85), from full and wet. Water comes
 * early in the day (as in examples 35 and 38) and thirst goes by what is short then; a bed is filled when what is short
 * in the morning is more than roots draw without thirst. Nothing evaporates beyond what the roots reach, so that the
 * account closes: no runoff, no rise from below.
 * @param now day asked about
 * @param rows told of every day where given
 */
export function followBed(
  season: WaterSeason,
  means: BedMeans,
  { notedMm, dueUntil, dueFrom }: GivenSoFar,
  now: SeasonDay,
  account: BedAccount,
  rows: WaterDay[] | null = null,
  startDay: DayNumber = 0,
): void {
  const { from, to, rainMm, referenceEt, at, cover, basal, largest, availableMm, readilyMm } = season;
  const { watering, efficiency, saltFactor, readilyEvaporableMm, evaporableMm } = means;
  const wetted = wettedShare(watering);
  const outPerMm = toLetOut(1, means);
  let depletion = 0;
  let layer = 0;
  let last: WateringWay | 'rain' = 'rain';
  let rainSum = 0;
  let givenSum = 0;
  account.depletionMm = account.readilyMm = account.dueOn = account.followingOn = Number.NaN;
  for (let day = from; day < to; day++) {
    const rain = rainMm[at + day];
    const et = referenceEt[at + day];
    const available = availableMm[day];
    const readily = readilyMm[day];

    // given
    let given = notedMm[day];
    if (given === Number.POSITIVE_INFINITY) given = depletion * outPerMm;
    const short = depletion - given * efficiency;
    if (day === now) {
      account.depletionMm = short > 0 ? short : 0;
      account.readilyMm = readily;
    }
    if (short > readily && (day < dueUntil || day >= dueFrom)) {
      given += short * outPerMm;
      if (day >= now) {
        if (Number.isNaN(account.dueOn)) account.dueOn = day;
        else if (Number.isNaN(account.followingOn)) account.followingOn = day;
      }
    }
    const entered = given * efficiency;
    rainSum += rain;
    givenSum += given;

    // roots
    const above = rain + entered - depletion;
    const drained = above > 0 ? above : 0;
    const start = above > 0 ? 0 : -above;
    const stress = saltFactor * waterStress(start, available, readily / available);
    const drawn = stress * basal[day] * et;
    const room = available - start;
    const transpired = drawn < room ? drawn : room;

    // bare ground
    if (rain >= wettingRainMm) last = 'rain';
    else if (entered > 0) last = watering;
    layer -= rain + entered / wetted;
    if (layer < 0) layer = 0;
    const exposed = exposedShare(cover[day], last);
    const reduction = evaporationReduction(layer, readilyEvaporableMm, evaporableMm);
    let evaporated = et * evaporationCoefficient(reduction, basal[day], largest[day], exposed);
    const leftInLayer = exposed * (evaporableMm - layer);
    if (evaporated > leftInLayer) evaporated = leftInLayer;
    if (evaporated > room - transpired) evaporated = room - transpired;
    layer += evaporated / exposed;

    depletion = start + transpired + evaporated;
    rows?.push({
      day: startDay + day,
      rainMm: rain,
      givenMm: given,
      besideMm: given - entered,
      transpiredMm: transpired,
      evaporatedMm: evaporated,
      drainedMm: drained,
      depletionMm: depletion,
      readilyAvailableMm: readily,
    });
  }
  account.rainMm = rainSum;
  account.givenMm = givenSum;
}
