import type { DayNumber } from '../calendar/index.ts';
import { mean } from '../math/index.ts';
import { finalTransferShare } from '../plant/index.ts';
import { dayTrace, longestSeason, type Plan, runnerOf, type Site, stage } from '../season/index.ts';

/** What the seasons of a plan say of lifting: those that bring bulbs. */
export type LiftRun = {
  seasons: readonly { season: number; fallsOn: DayNumber; topples: boolean }[];
  /** Share of the bulb's final mass not yet made so many days before neck fall, the mean of the seasons, 0…1. */
  forgone: (daysBefore: number) => number;
};

const longestForgone = 90;
/** Bulbs that stay green have stopped once no more than this is to come. */
const allButMade = 0.01;

export function liftRun(site: Site, plan: Plan): LiftRun {
  const runner = runnerOf(site, plan);
  const { dryMatterShare } = runner.crop.type;
  const trace = dayTrace(longestSeason + 1);
  const seasons: { season: number; fallsOn: DayNumber; topples: boolean }[] = [];
  const curves: number[][] = [];
  for (let season = 0; season < site.years; season++) {
    trace.length = 0;
    const outcome = runner.quickSeason(season, trace);
    if (outcome.reached < stage.onset || trace.length === 0) continue;
    const topples = outcome.reached === stage.fallen;
    // tops that dry on the bulb give it what they have, as far as they are ripe
    const madeOn = (day: number) =>
      trace.bulbG[day] +
      (finalTransferShare * trace.shootG[day] * Math.min(1, trace.ripening[day])) / dryMatterShare;
    const last = trace.length - 1;
    const finalG = Math.max(1e-9, madeOn(last));
    let end = topples ? outcome.fellOn : last;
    if (!topples) while (end > 0 && madeOn(end - 1) > (1 - allButMade) * finalG) end--;
    seasons.push({ season, fallsOn: plan.startDay + end, topples });
    curves.push(
      Array.from({ length: longestForgone + 1 }, (_, before) =>
        Math.max(0, 1 - madeOn(Math.max(0, Math.min(last, end) - before)) / finalG),
      ),
    );
  }
  const forgone = Array.from({ length: longestForgone + 1 }, (_, at) =>
    mean(curves.map((curve) => curve[at])),
  );
  return {
    seasons,
    forgone: (daysBefore) => {
      const at = Math.min(longestForgone, Math.max(0, daysBefore));
      const below = Math.floor(at);
      const above = Math.min(longestForgone, below + 1);
      return forgone[below] + (forgone[above] - forgone[below]) * (at - below);
    },
  };
}
