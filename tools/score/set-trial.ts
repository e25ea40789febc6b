import { type PlantValues, setHalfMm } from '../../packages/engine/src/index.ts';
import { answeredOf, type PublishedPlan } from './published-plan.ts';

/**
 * Sapporo 1949–50, Sapporo-ki, planted 25 April, 27 plants per m² (hro.or.jp 1950012): share of plants that bolted,
 * mass of those that did not, and days to ripeness by diameter of the set. Place from memory; diameters are the
 * middles of the printed classes.
 */
export const sapporoSets = [
  { setSizeMm: 10, bolted: 0.006, massG: 35.5, ripeDays: 104 },
  { setSizeMm: 14.5, bolted: 0.224, massG: 49, ripeDays: 103 },
  { setSizeMm: 21, bolted: 0.714, massG: 61.9, ripeDays: 104 },
  { setSizeMm: 27, bolted: 0.967, massG: 60, ripeDays: 104 },
] as const;

export const sapporo = {
  lat: 43.08,
  lon: 141.33,
  elevationM: 17,
  dayLengthClass: 'long',
  type: 'northern-long',
  start: 'sets',
  date: '04-25',
  densityPerM2: 27,
} as const satisfies PublishedPlan;

/** Sapporo's kind flowered from sets so much smaller than those on sale, mm. */
const soonerMm = setHalfMm - 18.9;

export type SetResult = { bolted: number; massG: number; ripeDays: number | null };

export function sapporoResults(values: PlantValues): SetResult[] {
  return sapporoSets.map(({ setSizeMm }) => {
    const { bulbG, fellOn } = answeredOf({ ...sapporo, setSizeMm }, values);
    const { boltedShare } = answeredOf({ ...sapporo, setSizeMm: setSizeMm + soonerMm }, values);
    return { bolted: boltedShare, massG: bulbG, ripeDays: fellOn };
  });
}
