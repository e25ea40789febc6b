import { offersOf } from '../../packages/answers/src/index.ts';
import { cultivars, practiceNear } from '../../packages/data/src/index.ts';
import { publishedPractice, readClimateNodes } from '../../packages/data/src/node.ts';
import {
  type ClimateNodes,
  climateAt,
  dayNumber,
  type Kind,
  kindsOf,
  openSite,
  type Site,
} from '../../packages/engine/src/index.ts';
import { nominalYear } from '../../tools/score/calendar-rows.ts';

let nodes: ClimateNodes | null = null;

/** In the climate of the normals' years, without any warming: so old are most calendars. */
export function siteOf(at: { latitudeDeg: number; longitudeDeg: number; elevationM: number | null }): Site {
  nodes ??= readClimateNodes();
  const climate = climateAt(nodes, at.latitudeDeg, at.longitudeDeg, at.elevationM);
  return openSite({ climate, years: 30, seed: 1, practice: practiceNear(publishedPractice, climate) });
}

/** Kinds with several names: nearly all of the catalogue in a third of the work. */
export const commonKinds: readonly Kind[] = kindsOf(offersOf(cultivars)).filter(
  ({ names }) => names.length > 2,
);

export const newYear = dayNumber(nominalYear, 1, 1);
