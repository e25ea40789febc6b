import { isLand } from '@neckfall/data';
import type { GridPoint } from '@neckfall/engine';
import { landMask } from './assets.ts';
import { type Located, locate } from './locate.ts';

/** A point of a map with its ground; null where there is none to grow on. */
export type AtlasGround = Pick<Located, 'climate' | 'practice'> | null;

/** The ground of many points, each as a bare point of an address has it. */
export async function atlasGround({ points }: { points: readonly GridPoint[] }): Promise<AtlasGround[]> {
  const mask = await landMask();
  const grounds: AtlasGround[] = [];
  for (const { latitudeDeg, longitudeDeg } of points) {
    // most of the Earth is sea, which is told without looking for towns
    const found = isLand(mask, latitudeDeg, longitudeDeg)
      ? await locate({ latitudeDeg, longitudeDeg, name: null, elevationM: null })
      : null;
    grounds.push(
      found && !('problem' in found) ? { climate: found.climate, practice: found.practice } : null,
    );
  }
  return grounds;
}
