import asset from '../../assets/cultivars.json' with { type: 'json' };
import type { CatalogueAsset } from './catalogue-entry.ts';
import type { Cultivar, Source } from './cultivar.ts';
import { cultivarOf } from './read-catalogue.ts';
import { startSources } from './start-sources.ts';

const catalogue = asset as unknown as CatalogueAsset;

/** All onions by name, shallots and multipliers among them. */
export const cultivars: readonly Cultivar[] = /* @__PURE__ */ catalogue.cultivars.map(cultivarOf);

/** Sources by the keys that origins name: of onions, and of ways to start them. */
export const catalogueSources: Readonly<Record<string, Source>> = { ...catalogue.sources, ...startSources };
