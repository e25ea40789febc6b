import type { PlantValues } from '../../packages/engine/src/index.ts';
import type { CalendarRow } from '../score/calendar-rows.ts';
import { datedErrors } from '../score/dated-cases.ts';
import { glanceLifting } from '../score/predict.ts';
import type { Places } from '../score/published-plan.ts';
import { sapporo, sapporoResults, sapporoSets } from '../score/set-trial.ts';
import { scoreSite } from '../score/sites.ts';
import { readStories, storyMargins } from '../score/stories.ts';
import { missOf } from '../score/timing.ts';

// All prices and caps here are choices of ours.
/** Weight of a row nobody read in full, added to the row's own. */
const leastWeight = 0.1;
/** A row that cannot be met may not rule the fit, days. */
const missCapDays = 24;
const centreCapDays = 45;
/** Price of a day from the middle of the window beside a day outside it. */
const centrePrice = 0.3;
const datedPrice = 0.4;
const datedFreeDays = 3;
const datedCapDays = 30;
const storyPrice = 0.015;
const setPrice = 3;

const mean = (of: readonly number[]) => of.reduce((a, b) => a + b, 0) / Math.max(1, of.length);

/** How far answered liftings lie from the published windows, then dated crops, stories and the ripeness of sets; days or so. */
export function dateLoss(rows: readonly CalendarRow[], values: PlantValues, places: Places): number {
  let loss = 0;
  let weight = 0;
  for (const row of rows) {
    const miss = missOf(row, row.harvestWindow!, glanceLifting(scoreSite(row, values), row));
    const w = leastWeight + row.weight ** 1.5;
    weight += w;
    loss +=
      w *
      (Math.min(miss.missDays, missCapDays) +
        centrePrice * Math.min(Math.abs(miss.centreDays), centreCapDays));
  }
  const dated = datedErrors(values, places).map(({ days }) =>
    Math.min(datedCapDays, Math.max(0, Math.abs(days ?? datedCapDays) - datedFreeDays)),
  );
  const stories = readStories().filter(places);
  const late = places(sapporo)
    ? sapporoResults(values).map(({ ripeDays }, i) => Math.abs((ripeDays ?? 140) - sapporoSets[i].ripeDays))
    : [];
  return (
    loss / weight +
    datedPrice * mean(dated) +
    storyPrice * stories.reduce((a, story) => a + storyMargins(story, values), 0) +
    setPrice * mean(late.map((days) => Math.min(1, days / 30)))
  );
}
