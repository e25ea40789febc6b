import { kitchenKindsOf } from '../../packages/answers/src/index.ts';
import { cultivars } from '../../packages/data/src/index.ts';
import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  climateAt,
  type Household,
  type KitchenKind,
  landWarmingSinceNormalsC,
  type MonthlyClimate,
  warmed,
} from '../../packages/engine/src/index.ts';

/** A made-up household of four in a climate like that of a place that is there. */
export type Kitchen = {
  name: string;
  words: string;
  climate: MonthlyClimate;
  kinds: readonly KitchenKind[];
  household: Household;
};

/** 9 kg a head and year. */
const gramsPerWeek = (4 * 9000 * 7) / 365;

export function kitchens(): Kitchen[] {
  const nodes = readClimateNodes();
  const kitchen = (
    name: string,
    words: string,
    [latitudeDeg, longitudeDeg, elevationM]: readonly [number, number, number],
    country: string,
    store: Household['store'],
  ): Kitchen => ({
    name,
    words,
    climate: warmed(climateAt(nodes, latitudeDeg, longitudeDeg, elevationM), landWarmingSinceNormalsC),
    kinds: kitchenKindsOf(cultivars, country),
    household: { people: 4, gramsPerWeek, store, likes: [], seedAge: null },
  });
  return [
    kitchen('Quinta do Sobro', 'mild winters, dry summers, 39° N', [38.72, -9.14, 80], 'PT', 'shed'),
    kitchen('Harrowgill', 'cool summers, long days, 54° N', [53.8, -1.55, 60], 'GB', 'shed'),
    kitchen('Mwangaza', 'tropical highland, 1° S', [-1.29, 36.82, 1700], 'KE', 'shed'),
  ];
}
