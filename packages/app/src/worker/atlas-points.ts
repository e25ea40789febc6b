import { atlasEntries, type DayNumber } from '@neckfall/engine';
import { packEntries, perPoint } from './atlas-pack.ts';
import type { Work } from './protocol.ts';
import { type SiteAsked, siteOf } from './site.ts';

export type AtlasPointsAsked = { sites: readonly SiteAsked[]; from: DayNumber };

/** What onions do at each of some points, packed one after the other; see {@link packEntries}. */
export async function atlasPoints({ sites, from }: AtlasPointsAsked, work: Work): Promise<Float32Array> {
  const packed = new Float32Array(sites.length * perPoint);
  for (const [at, site] of sites.entries()) {
    packed.set(packEntries(atlasEntries(siteOf(site), from), from), at * perPoint);
    await work.pause();
  }
  return packed;
}
