import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  climateAt,
  type DayNumber,
  dayNumber,
  landWarmingSinceNormalsC,
  type MonthlyClimate,
  openSite,
  type Site,
  warmed,
} from '../../packages/engine/src/index.ts';

/** A place at which causes are put into seasons. */
export type StudyPlace = {
  name: string;
  /** First day of the year of its starts. */
  year: DayNumber;
  climate: MonthlyClimate;
  /** As `neckfall why` opens it. */
  asked: Site;
  /** Weather and plants of the seasons that were lived through: none of those that are asked. */
  lived: Site;
};

const askedSeasons = { years: 30, seed: 1 } as const;
const livedSeasons = { years: 60, seed: 7919 } as const;

const at: readonly (readonly [
  name: string,
  latitudeDeg: number,
  longitudeDeg: number,
  elevationM: number,
])[] = [
  ['1° S, highland', -1.29, 36.82, 1680],
  ['14° N, dry tropics', 15.6, 32.5, 390],
  ['26° N, subtropics', 26.3, -98.2, 40],
  ['34° S, mild coast', -33.9, 151.0, 40],
  ['38° N, Atlantic', 38.7, -9.1, 80],
  ['39° N, continental', 38.5, -97.5, 430],
  ['45° N, cold winters', 44.98, -93.27, 260],
  ['54° N, cool summers', 53.8, -1.55, 60],
];

export function studyPlaces(): StudyPlace[] {
  const nodes = readClimateNodes();
  return at.map(([name, latitudeDeg, longitudeDeg, elevationM]) => {
    const climate = warmed(climateAt(nodes, latitudeDeg, longitudeDeg, elevationM), landWarmingSinceNormalsC);
    return {
      name,
      year: dayNumber(2027, 1, 1),
      climate,
      asked: openSite({ climate, ...askedSeasons }),
      lived: openSite({ climate, ...livedSeasons }),
    };
  });
}
