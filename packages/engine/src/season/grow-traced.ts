import { endSeason } from './end-season.ts';
import { growDay } from './grow-day.ts';
import type { Outcome } from './outcome.ts';
import type { PlantState } from './plant-state.ts';
import type { Terms } from './terms.ts';
import type { DayTrace } from './trace.ts';

/** Grows `plant` from day `from` on until its season is over, by steps; `trace` has every day on which it stood. */
export function growTraced(
  plant: PlantState,
  terms: Terms,
  from: number,
  out: Outcome,
  trace: DayTrace | null,
): void {
  const { lastDay, type } = terms.crop;
  let day = from;
  for (; day < lastDay; day++) {
    const goesOn = growDay(plant, terms, day, out);
    if (trace && (goesOn || plant.ripening >= 1)) {
      const { leaves, green, shootG, bulbG, bulbing, ripening } = plant;
      trace.put(day, leaves, green, shootG, bulbG / type.dryMatterShare, bulbing, ripening);
    }
    if (!goesOn) break;
  }
  endSeason(plant, terms, day, out);
}
