import type { Spacing, Stand } from '../bed/index.ts';
import { bulbMassG, fieldFactor, type StartMethod, startWays } from '../plant/index.ts';

/** From the least to the most, where sources give no one figure. */
export type Between = readonly [least: number, most: number];

/** Ages of seed that are told apart. */
export const seedAges = ['fresh', 'one-year', 'two-years'] as const;
/** How old the seed is, kept in an ordinary room. */
export type SeedAge = (typeof seedAges)[number];

/** A figure with where it comes from: a source, or memory. */
type Known<Value> = { value: Value; source: string };

const known = <Value>(value: Value, source: string): Known<Value> => ({ value, source });

/** What is reckoned with, and whence. */
export const standFigures = {
  /** Share of seed that is alive. */
  germination: {
    unsaid: known<Between>(
      [0.7, 0.9],
      '7 CFR 201.31: at least 70 % may be sold; memory: 90 % for good fresh seed',
    ),
    fresh: known<Between>([0.85, 0.9], 'memory'),
    'one-year': known<Between>([0.6, 0.7], 'memory'),
    'two-years': known<Between>([0.3, 0.5], 'memory'),
  },
  /** Share of live seed that becomes a plant where the ground is warm enough. */
  field: {
    bed: known<Between>([0.5, 0.8], 'memory: UK handbook field factors'),
    tray: known<Between>([fieldFactor.tray, fieldFactor.tray], 'memory'),
  },
  seedsPerGram: known<Between>([250, 350], 'seed producer’s data for one cultivar, Texas Grano'),
  bundlePlants: known<Between>([60, 75], 'Chisago County Master Gardeners 2010'),
  /** A set beside a globe of its width: they are longer than wide, and sets of 16 mm weigh 2–3 g (Assiut 2007–09). */
  setOverGlobe: known<Between>([1, 1.5], 'derived: sets of 2–3 g, Assiut 2007–09'),
} as const;

/** What to have at hand so that so many plants stand. */
export type Needed =
  | {
      from: 'seed';
      seeds: Between;
      grams: Between;
      /** Holes or cells sown with several seeds; null: plants stand singly. */
      together: { places: number; seedsEach: Between } | null;
    }
  | { from: 'plants'; plants: number; bundles: Between }
  | { from: 'sets'; sets: number; kg: Between };

type How = {
  start: StartMethod;
  /** Of seed; null: not said. */
  seedAge: SeedAge | null;
  setSizeMm: number;
  /** Share of good seeds that come up and stand, as the season has it. */
  emergedShare: number;
};

/** Null where none would come up. */
export function neededFor(
  stand: Stand,
  { perStation }: Pick<Spacing, 'perStation'>,
  how: How,
): Needed | null {
  const { plants, stations } = stand;
  const { from, standsInTrays } = startWays[how.start];
  if (from === 'plants') {
    const [few, many] = standFigures.bundlePlants.value;
    return { from, plants, bundles: [Math.ceil(plants / many), Math.ceil(plants / few)] };
  }
  if (from === 'sets') {
    const [light, heavy] = standFigures.setOverGlobe.value;
    const globesKg = (plants * bulbMassG(how.setSizeMm)) / 1000;
    return { from, sets: plants, kg: [globesKg * light, globesKg * heavy] };
  }
  const [worst, best] = shareStanding(standsInTrays ? 'tray' : 'bed', how);
  if (worst <= 0) return null;
  const together =
    perStation > 1
      ? {
          places: stations,
          seedsEach: [Math.ceil(perStation / best), Math.ceil(perStation / worst)] as const,
        }
      : null;
  const seeds: Between = together
    ? [stations * together.seedsEach[0], stations * together.seedsEach[1]]
    : [Math.ceil(plants / best), Math.ceil(plants / worst)];
  const [few, many] = standFigures.seedsPerGram.value;
  return { from, seeds, grams: [seeds[0] / many, seeds[1] / few], together };
}

/** Seeds/m² = plants wanted / (germination × field factor): UK handbooks (memory); warmth as the season has it. */
function shareStanding(where: 'bed' | 'tray', { seedAge, emergedShare }: How): Between {
  const [dead, alive] = standFigures.germination[seedAge ?? 'unsaid'].value;
  const [hard, kind] = standFigures.field[where].value;
  // the season's share has a field factor of its own in it
  const warmEnough = emergedShare / fieldFactor[where];
  return [dead * hard * warmEnough, Math.min(1, alive * kind * warmEnough)];
}
