import type { Cultivar, CultivarField, Origin, Source } from './cultivar.ts';

type Written = Omit<
  Cultivar,
  'id' | 'aliases' | 'kind' | 'uses' | 'soldIn' | 'keepsMonths' | 'keepsFrom' | 'dryMatterShare' | 'origins'
>;

/**
 * An onion as the asset has it: what is not known is left out. `source` holds for every field but those in `from` (field
 * to source) and `memory`; without `source` the whole entry is from memory.
 */
export type CatalogueEntry = Pick<Written, 'name' | 'class' | 'type' | 'argued' | 'regions' | 'starts'> &
  Partial<Omit<Written, 'name' | 'class' | 'type' | 'argued' | 'regions' | 'starts'>> & {
    aliases?: readonly string[];
    kind?: Cultivar['kind'];
    uses?: Cultivar['uses'];
    soldIn?: Cultivar['soldIn'];
    /** Only months published for this onion. */
    keepsMonths?: Cultivar['keepsMonths'];
    dryMatterShare?: number;
    source?: string;
    from?: Readonly<Partial<Record<CultivarField, string>>>;
    memory?: readonly CultivarField[];
  };

export type CatalogueAsset = {
  sources: Readonly<Record<string, Source>>;
  cultivars: readonly CatalogueEntry[];
};

/** Fields that an entry need not have. */
export const entryFields = [
  'name',
  'aliases',
  'kind',
  'class',
  'need',
  'colour',
  'shape',
  'uses',
  'mild',
  'maturity',
  'daysToMaturity',
  'hybrid',
  'bolting',
  'keepsMonths',
  'dryMatterShare',
  'regions',
  'soldIn',
  'starts',
] as const satisfies readonly CultivarField[];

export function originOf(entry: CatalogueEntry, field: CultivarField): Origin {
  if (entry.memory?.includes(field)) return 'memory';
  return entry.from?.[field] ?? entry.source ?? 'memory';
}
