import type { CultivarTraits, OnionType, StartMethod } from '../plant/index.ts';

/** An onion that can be had, and the ways in which it is started. */
export type Offer = {
  name: string;
  type: OnionType;
  traits: CultivarTraits | null;
  starts: readonly StartMethod[];
  /** Shortest and longest usual keeping, months. */
  keepsMonths: readonly [number, number];
  /** Whether the keeping was published for the cultivar or is its type's. */
  keepsFrom: 'cultivar' | 'type';
};

/** Onions started one way that are the same as far as is known. */
export type Kind = Omit<Offer, 'name' | 'starts'> & { names: readonly string[]; start: StartMethod };

/** Joins what cannot be told apart; kinds and names stay in the order of the offers. */
export function kindsOf(offers: readonly Offer[]): Kind[] {
  const kinds = new Map<string, Kind & { names: string[] }>();
  for (const { name, starts, ...plant } of offers) {
    for (const start of starts) {
      const key = `${plantKey({ ...plant, start })} ${plant.keepsMonths.join()} ${plant.keepsFrom}`;
      const kind = kinds.get(key);
      if (!kind) kinds.set(key, { ...plant, start, names: [name] });
      else if (!kind.names.includes(name)) kind.names.push(name);
    }
  }
  return [...kinds.values()];
}

/** The same for plants that grow alike. */
export function plantKey({ type, traits, start }: Pick<Kind, 'type' | 'traits' | 'start'>): string {
  const own = traits && [
    traits.criticalPhotoperiodH,
    traits.ripeningFactor,
    traits.boltingFactor,
    traits.dryMatterShare,
  ];
  return `${start} ${type} ${own?.map((value) => value ?? '').join(',') ?? ',,,'}`;
}

/** Middle of the usual keeping, months. */
export function usualMonths({ keepsMonths }: Pick<Kind, 'keepsMonths'>): number {
  return (keepsMonths[0] + keepsMonths[1]) / 2;
}
