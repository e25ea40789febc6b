import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  type ClimateNodes,
  climateAt,
  type DrawSpread,
  defaultPlantValues,
  drawsOf,
  openSite,
  type PlantValues,
  type Site,
  valuesAt,
} from '../../packages/engine/src/index.ts';

/** Years of a score, and of a fit, which looks a thousand times; the draws of both are evenly spread. */
export const scoreYears = 30;
export const fitYears = 12;
const scoreSeed = 1;
/** Draws in a fit: about what memory says of kinds within a type; those of answers were widened after it. */
const fitSpread: DrawSpread = { criticalH: 0.35, ripening: 0.22, phyllochron: 0.08 };

export type ScorePlace = {
  latitudeDeg: number;
  longitudeDeg: number;
  elevationM: number | null;
  /** Warmth of October to January above the normals, °C: a year of which a source says so. */
  establishmentWarmerC?: number | undefined;
};

let nodes: ClimateNodes | null = null;
const climates = new Map<string, ReturnType<typeof climateAt>>();
const grounds = new Map<string, Site>();
const opened = new WeakMap<PlantValues, Map<string, Site>>();
let yearsInUse = scoreYears;

/** How many weather years the sites opened from now on have. */
export function useYears(years: number): void {
  yearsInUse = years;
}

/**
 * A site on the built-in climate without any warming: published calendars are of the normals' years. The same place
 * with the same values is opened once, so that its drivers and best bulb serve every row.
 */
export function scoreSite(at: ScorePlace, values: PlantValues): Site {
  const key = `${at.latitudeDeg},${at.longitudeDeg},${at.elevationM},${at.establishmentWarmerC ?? 0},${yearsInUse}`;
  let sites = opened.get(values);
  if (!sites) {
    sites = new Map();
    opened.set(values, sites);
  }
  let site = sites.get(key);
  if (!site) {
    site = onGround(groundOf(key, at), values);
    sites.set(key, site);
  }
  return site;
}

function groundOf(key: string, at: ScorePlace): Site {
  let ground = grounds.get(key);
  if (!ground) {
    ground = openSite({ climate: climateOf(key, at), years: yearsInUse, seed: scoreSeed });
    if (yearsInUse === fitYears) {
      const draws = drawsOf(fitYears, scoreSeed, fitSpread);
      ground.draws = () => draws;
    }
    grounds.set(key, ground);
  }
  return ground;
}

/** What weather and days are to plants as a fit moves none of it. */
const unmoved = [
  'emergenceBaseC',
  'emergenceCapC',
  'leafBaseC',
  'leafCapC',
  'growthBaseC',
  'lightHalfMJ',
] as const;

/** Other plants on the same ground: a fit opens the same place a thousand times. */
function onGround(ground: Site, values: PlantValues): Site {
  if (unmoved.some((name) => values.growth[name] !== defaultPlantValues.growth[name]))
    throw new Error(`a fit may not move ${unmoved.join(', ')}: drivers are shared`);
  return {
    ...ground,
    values: valuesAt(values, ground.longestDayH),
    referenceG: new Map(),
  };
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
