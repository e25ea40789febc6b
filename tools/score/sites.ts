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

export type ScorePlace = {
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number | null;
  /** Warmth of October to January above the normals, °C: a year of which a source says so. */
  establishmentWarmerC?: number | undefined;
};

let nodes: ClimateNodes | null = null;
const climates = new Map<string, ReturnType<typeof climateAt>>();
const tables = new Map<string, ReturnType<Site['dayTable']>>();
const opened = new WeakMap<PlantValues, Map<string, Site>>();

/**
 * A site on the built-in climate without any warming: published calendars are of the normals' years. The same place
 * with the same values is opened once, so that its drivers and best bulb serve every row.
 */
export function scoreSite(at: ScorePlace, values: PlantValues): Site {
  const key = `${at.latitudeDeg},${at.longitudeDeg},${at.elevationM},${at.establishmentWarmerC ?? 0}`;
  let sites = opened.get(values);
  if (!sites) {
    sites = new Map();
    opened.set(values, sites);
  }
  let site = sites.get(key);
  if (!site) {
    site = openSite({ climate: climateOf(key, at), years: scoreYears, seed: scoreSeed, values });
    shareDayTables(site, key);
    sites.set(key, site);
  }
  return site;
}

function climateOf(key: string, at: ScorePlace) {
  let climate = climates.get(key);
  if (!climate) {
    nodes ??= readClimateNodes();
    climate = climateAt(nodes, at.latitudeDeg, at.longitudeDeg, at.elevationM);
    const { establishmentWarmerC: warmer = 0 } = at;
    if (warmer !== 0)
      climate = { ...climate, tempMeanC: climate.tempMeanC.map((t, m) => (m < 1 || m > 8 ? t + warmer : t)) };
    climates.set(key, climate);
  }
  return climate;
}

/** Day lengths don't hang on the plant: a fit opens the same place a thousand times. */
function shareDayTables(site: Site, place: string): void {
  const own = site.dayTable;
  site.dayTable = (year) => {
    const key = `${place},${year}`;
    let table = tables.get(key);
    if (!table) {
      table = own(year);
      tables.set(key, table);
    }
    return table;
  };
}
