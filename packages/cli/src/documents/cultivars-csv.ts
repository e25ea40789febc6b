import type { CsvValue } from '../output/csv.ts';
import type { CultivarsDocument } from './cultivars-schema.ts';

/** One row an onion; lists in one cell, parted by semicolons. */
export function cultivarRows({ cultivars }: CultivarsDocument): Record<string, CsvValue>[] {
  return cultivars.map((cultivar) => ({
    id: cultivar.id,
    name: cultivar.name,
    aliases: cultivar.aliases.join('; '),
    kind: cultivar.kind,
    class: cultivar.class,
    type: cultivar.type,
    needFromH: cultivar.need?.fromH ?? null,
    needToH: cultivar.need?.toH ?? null,
    needLight: cultivar.need?.light ?? null,
    colour: cultivar.colour,
    shape: cultivar.shape,
    uses: cultivar.uses.join('; '),
    mild: cultivar.mild,
    maturity: cultivar.maturity,
    daysFrom: cultivar.daysToMaturity?.fromDays ?? null,
    daysTo: cultivar.daysToMaturity?.toDays ?? null,
    daysSince: cultivar.daysToMaturity?.since ?? null,
    hybrid: cultivar.hybrid,
    bolting: cultivar.bolting,
    keepsMonthsFrom: cultivar.keepsMonths[0],
    keepsMonthsTo: cultivar.keepsMonths[1],
    keepsFrom: cultivar.keepsFrom,
    dryMatterShare: cultivar.dryMatterShare,
    regions: cultivar.regions.join('; '),
    soldIn: cultivar.soldIn.join('; '),
    starts: cultivar.starts.join('; '),
  }));
}
