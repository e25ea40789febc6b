import { type Cultivar, catalogueSources, plantOf } from '@neckfall/data';
import type { Speaker } from '@neckfall/words';
import { version } from '../version.ts';
import type { CultivarsAsked, CultivarsDocument } from './cultivars-schema.ts';

export function cultivarsDocument(
  found: readonly Cultivar[],
  asked: CultivarsAsked,
  { say }: Speaker,
): CultivarsDocument {
  const keys = new Set(found.flatMap(({ origins }) => Object.values(origins)));
  const used = Object.entries(catalogueSources).filter(([key]) => keys.has(key));
  return {
    schema: 'neckfall/cultivars@1',
    engine: version,
    place: null,
    assumed: [say('cultivars.assumed.type'), say('cultivars.assumed.keeps'), say('cultivars.assumed.memory')],
    warnings: [],
    sources: used.map(([, { title }]) => title),
    asked,
    cultivars: found.map((cultivar) => ({
      ...cultivar,
      aliases: [...cultivar.aliases],
      argued: [...cultivar.argued],
      uses: [...cultivar.uses],
      keepsMonths: [...cultivar.keepsMonths],
      regions: [...cultivar.regions],
      soldIn: [...cultivar.soldIn],
      starts: [...cultivar.starts],
      traits: plantOf(cultivar).traits,
    })),
    sourcesByKey: Object.fromEntries(used),
  };
}
