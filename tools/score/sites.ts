import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  type ClimateNodes,
  climateAt,
  openSite,
  type PlantValues,
  type Site,
} from '../../packages/engine/src/index.ts';

/** Years and seed of the validation runs. */
export const scoreYears = 30;
export const scoreSeed = 1;

let nodes: ClimateNodes | null = null;
const climates = new Map<string, ReturnType<typeof climateAt>>();

/** A site on the built-in climate without any warming: published calendars are of the normals' years. */
export function scoreSite(
  at: { latitudeDeg: number; longitudeDeg: number; elevationM: number | null },
  values: PlantValues,
): Site {
  nodes ??= readClimateNodes();
  const key = `${at.latitudeDeg},${at.longitudeDeg},${at.elevationM}`;
  let climate = climates.get(key);
  if (!climate) {
    climate = climateAt(nodes, at.latitudeDeg, at.longitudeDeg, at.elevationM);
    climates.set(key, climate);
  }
  return openSite({ climate, years: scoreYears, seed: scoreSeed, values });
}
