import { standOf, usualSpacing } from '../bed/index.ts';
import { startWays } from '../plant/index.ts';
import type { SeasonSummary } from '../season/index.ts';
import { neededFor, type SeedAge } from '../stand/index.ts';
import type { StartNeed } from './keep-year.ts';

/** A cell of a tray for onions, l: those tried held 0.004 to 0.02 (Leskovar and Vavrina 1999, seen). */
const cellL = 0.02;
const cm2PerM2 = 10_000;

/** What a bed of so many m² takes, the higher figure where sources give two. */
export function startNeedOf(summary: SeasonSummary, bedM2: number, seedAge: SeedAge | null): StartNeed {
  const { plan, emergedShare } = summary;
  const plants = Math.ceil(bedM2 * plan.densityPerM2 - 1e-9);
  const { rowCm } = usualSpacing;
  const spacing = { rowCm, plantCm: cm2PerM2 / (rowCm * plan.densityPerM2), perStation: 1 };
  const stand = standOf(plants, spacing);
  const setSizeMm = plan.start === 'sets' ? plan.setSizeMm : 0;
  const needed = neededFor(stand, spacing, { start: plan.start, seedAge, setSizeMm, emergedShare });
  // one place for each plant that is to stand: seed beyond that fills the cells in which none came up
  const trayCells = startWays[plan.start].standsInTrays ? stand.stations : null;
  return {
    plants,
    seeds: needed?.from === 'seed' ? needed.seeds[1] : null,
    sets: needed?.from === 'sets' ? needed.sets : null,
    setsKg: needed?.from === 'sets' ? needed.kg[1] : null,
    bundles: needed?.from === 'plants' ? needed.bundles[1] : null,
    trayCells,
    compostL: trayCells === null ? null : trayCells * cellL,
    rowM: stand.rowM,
  };
}
