import type { Site } from '../season/index.ts';

/**
 * The seasons of a site in the order in which few of them tell most: those whose plants bulb at the shortest and at the
 * longest days come first, then those that ripen quickest and slowest, then the rest as they are.
 */
export function tellingYears(site: Site): number[] {
  const draws = site.draws();
  const left = draws.map((_, season) => season);
  const first: number[] = [];
  for (const trait of ['criticalShiftH', 'ripeningFactor'] as const) {
    for (const side of [-1, 1]) {
      if (left.length === 0) break;
      const most = left.reduce((a, b) => (side * draws[b][trait] > side * draws[a][trait] ? b : a));
      first.push(most);
      left.splice(left.indexOf(most), 1);
    }
  }
  return [...first, ...left];
}
