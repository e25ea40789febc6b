import type { DayNumber } from '../calendar/index.ts';
import { normalCdf, normalQuantile } from '../math/index.ts';
import { topsBetweenPlantsDays, topsOverShare } from '../plant/index.ts';

/** One season that a crop may meet, as far as lifting goes. */
export type LiftSeason = {
  /** Neck fall, or where tops stay up, the day from which bulbs gain no more. */
  fallsOn: DayNumber;
  /** Rain by day from the first day told on, mm. */
  rainMm: (day: DayNumber) => number;
};

/** Necks whose tops would fall within so many days are soft and close as they dry (UC Davis lifts from 10–20 % over; days are ours). */
const softWithinDays = 7;
/** Worth lost for each day that a neck is short of that: it stays open, rots and keeps badly (ours, adjustable). */
const openNeckPerDay = 0.02;

/** A plant whose top is over loses in a dry day to regrown roots, split skins and rot, and more in rain (ours; worst three weeks after half were over: Wright et al. 2001; stained by wet: Wright & Grant 1997). */
const standingPerDay = 0.004;
const rainyDayMost = 0.012;
const rainyScaleMm = 5;
/** Tops of a stand go over within about so many days before neck fall. */
const firstTopsDays = 20;

const fallenMean = normalQuantile(0.8) * topsBetweenPlantsDays;

/** Necks still open: mean days, over the plants, by which their tops are short of soft. */
function openNecks(daysAfterFall: number): number {
  const short = -(daysAfterFall + fallenMean) - softWithinDays;
  const z = short / topsBetweenPlantsDays;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return openNeckPerDay * (topsBetweenPlantsDays * density + short * normalCdf(z));
}

function standingLoss(rainMm: number): number {
  return standingPerDay + rainyDayMost * (1 - Math.exp(-Math.max(0, rainMm) / rainyScaleMm));
}

/**
 * Share of a crop's worth lost by lifting it on each of so many days from `from` on, the mean over the seasons, 0…1.
 *
 * @param forgone share of the bulbs' final mass not yet made, by days before neck fall
 */
export function liftLosses(
  seasons: readonly LiftSeason[],
  forgone: (daysBefore: number) => number,
  from: DayNumber,
  days: number,
): Float64Array {
  const lost = new Float64Array(days);
  for (const { fallsOn, rainMm } of seasons) {
    let standing = 0;
    for (let day = Math.min(from, Math.round(fallsOn) - firstTopsDays); day < from + days; day++) {
      const after = day - fallsOn;
      if (day >= from)
        lost[day - from] += (forgone(Math.max(0, -after)) + openNecks(after) + standing) / seasons.length;
      standing += topsOverShare(after) * standingLoss(rainMm(day));
    }
  }
  return lost.map((share) => Math.min(1, share));
}
