import {
  bulbDiameterMm,
  bulbMassG,
  fullSizeDryG,
  limits,
  type Plan,
  type PlantValues,
  referenceBulbG,
  runnerOf,
  type Site,
  stage,
  type Verdict,
} from '../../packages/engine/src/index.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import { densityErrors, densityFit } from '../score/density-trials.ts';
import { onsetErrors } from '../score/onset-cases.ts';
import { rowPlans } from '../score/predict.ts';
import type { Places } from '../score/published-plan.ts';
import { sapporo, sapporoResults, sapporoSets } from '../score/set-trial.ts';
import { scoreSite } from '../score/sites.ts';
import { readStories, storyMargins, storyPlan, storySite } from '../score/stories.ts';

// All prices here are choices of ours.
const sizePrice = 12;
const unripePrice = 8;
const densityPrice = 12;
const setPrice = 3;
const onsetPrice = 0.15;
const storyPrice = 0.015;
/** A bulb of this mass is not small to the eye, g. */
const largeG = bulbMassG(limits.smallMm * 1.1);
/** A case is met when it clears its limit by this much (natural log). */
const clearance = 0.1;
const capLog = 0.7;

const over = (log: number, free: number) => Math.max(0, Math.min(1, Math.abs(log)) - free);
const mean = (of: readonly number[]) => of.reduce((a, b) => a + b, 0) / Math.max(1, of.length);

/** Onsets, stories and the days sets take to ripen, in the mean climate, each 0 where it is met. */
export function dateParts(
  values: PlantValues,
  places: Places,
): { onsets: number; stories: number; setDays: number } {
  const onsets = onsetErrors(values, places).map(({ days }) =>
    Math.min(30, Math.max(0, Math.abs(days ?? 30) - 3)),
  );
  const stories = readStories().filter(places);
  const late = places(sapporo)
    ? sapporoResults(values).map(({ ripeDays }, i) => Math.abs((ripeDays ?? 140) - sapporoSets[i].ripeDays))
    : [];
  return {
    onsets: onsetPrice * mean(onsets),
    stories: storyPrice * stories.reduce((a, story) => a + storyMargins(story, values), 0),
    setDays: setPrice * mean(late.map((days) => Math.min(1, days / 30))),
  };
}

/** Sizes of calendars, bulb mass over density and by set, in the mean climate, each 0 where it is met. */
export function sizeParts(
  rows: readonly CalendarRow[],
  values: PlantValues,
  places: Places,
): { size: number; density: number; sets: number } {
  let size = 0;
  let weight = 0;
  for (const row of rows) {
    if (row.outcome === 'bolts' || row.outcome === 'winter-killed' || row.outcome === 'no-bulb') continue;
    // Failures are few; each kind should weigh about as much as the good crops together.
    const w = row.outcome === 'not-ripe' ? 10 : row.outcome === 'small' ? 4 : 3;
    weight += w;
    const site = scoreSite(row, values);
    size += w * sizePriceOf(site, rowPlans(site, row)[1], row.outcome ?? 'good');
  }
  for (const story of readStories().filter(places)) {
    const { outcome } = story.expected;
    if (!outcome.includes('small')) continue;
    const site = storySite(story, values);
    weight += 2;
    size += 2 * sizePriceOf(site, storyPlan(site, story), outcome.includes('good') ? 'good' : 'small');
  }
  const { levels, shapes } = densityErrors(densityFit(values, places));
  const density =
    mean([...levels.values()].map((log) => over(log, 0.05))) +
    mean([...shapes.values()].map((logs) => mean(logs.map((log) => over(log, 0.03)))));
  const sets = places(sapporo)
    ? sapporoResults(values).map(({ massG }, i) =>
        over(Math.log(Math.max(1, massG) / sapporoSets[i].massG), 0.05),
      )
    : [];
  return { size: size / weight, density: densityPrice * density, sets: setPrice * mean(sets) };
}

function sizePriceOf(site: Site, plan: Plan, published: Verdict): number {
  const runner = runnerOf(site, plan);
  const outcome = runner.meanSeason();
  if (published === 'not-ripe') {
    const short = outcome.reached === stage.onset ? 0 : 1;
    return unripePrice * short;
  }
  const ripe = outcome.reached === stage.fallen;
  if (!ripe) return published === 'small' ? 0 : sizePrice * capLog;
  const { dryMatterShare } = runner.crop.type;
  // A bulb well above any place's limit needs no reference, which is what costs most here.
  const clear = limits.smallShare * fullSizeDryG * Math.exp(clearance);
  if (published !== 'small' && outcome.bulbDryG >= clear && outcome.bulbDryG / dryMatterShare >= largeG)
    return 0;
  const byPlace = outcome.bulbDryG / (limits.smallShare * Math.min(fullSizeDryG, referenceBulbG(site, plan)));
  const byEye = (bulbDiameterMm(outcome.bulbDryG / dryMatterShare) / limits.smallMm) ** 3;
  const log = Math.log(Math.max(0.05, Math.min(byPlace, byEye)));
  const short = published === 'small' ? log + clearance : clearance - log;
  return sizePrice * Math.min(capLog, Math.max(0, short));
}
