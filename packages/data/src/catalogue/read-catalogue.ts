import { foldName } from '../places/index.ts';
import { type CatalogueEntry, entryFields, originOf } from './catalogue-entry.ts';
import type { Cultivar, CultivarField, Origin } from './cultivar.ts';
import { usualKeeping } from './usual-keeping.ts';

/** An entry with all its fields, and the origin of each that is known. */
export function cultivarOf(entry: CatalogueEntry): Cultivar {
  const { name, class: dayLengthClass, type, argued, regions, starts } = entry;
  const kind = entry.kind ?? 'bulb-onion';
  const uses = entry.uses ?? [];
  const mild = entry.mild ?? null;
  const usual = usualKeeping({ kind, type, uses, mild });
  const origins: Partial<Record<CultivarField, Origin>> = { keepsMonths: 'memory', dryMatterShare: 'memory' };
  for (const field of entryFields) if (entry[field] !== undefined) origins[field] = originOf(entry, field);
  return {
    id: foldName(name).replaceAll(' ', '-'),
    name,
    aliases: entry.aliases ?? [],
    kind,
    class: dayLengthClass,
    type,
    argued,
    need: entry.need ?? null,
    colour: entry.colour ?? null,
    shape: entry.shape ?? null,
    uses,
    mild,
    maturity: entry.maturity ?? null,
    daysToMaturity: entry.daysToMaturity ?? null,
    hybrid: entry.hybrid ?? null,
    bolting: entry.bolting ?? null,
    keepsMonths: entry.keepsMonths ?? usual.months,
    keepsFrom: entry.keepsMonths ? 'cultivar' : 'type',
    dryMatterShare: entry.dryMatterShare ?? usual.dryMatterShare,
    regions,
    soldIn: entry.soldIn ?? [],
    starts,
    origins,
  };
}
