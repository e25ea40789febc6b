import { defaultPlantValues, type PlantValues } from '../../packages/engine/src/index.ts';
import type { PracticeTest } from './practice-check.ts';
import { autumnStartsInTime, shortDayTrays, tropicalSets } from './practice-kinds.ts';
import { fullAtThirteenLeaves } from './practice-leaves.ts';
import { northernSets, northernSizes, northernWindows } from './practice-north.ts';

export type { PracticeTest } from './practice-check.ts';

/** The checks apart: some are wanted often while a fit is judged. */
export const practiceChecks: readonly ((values: PlantValues) => PracticeTest[])[] = [
  northernWindows,
  northernSets,
  northernSizes,
  shortDayTrays,
  autumnStartsInTime,
  tropicalSets,
  fullAtThirteenLeaves,
];

/** What growers everywhere take for granted, without a source to name; answered in weather years of the normals. */
export function practiceTests(values: PlantValues = defaultPlantValues): PracticeTest[] {
  return practiceChecks.flatMap((check) => check(values));
}
