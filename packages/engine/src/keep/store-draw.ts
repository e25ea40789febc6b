import { evenNormals, randomSource } from '../math/index.ts';

/** How fast one store loses onions against the usual: factors on the rates. */
export type StoreDraw = { sprouting: number; rotting: number; drying: number };

/** The usual store: all its rates as they are. */
export const noStoreDraw: StoreDraw = { sprouting: 1, rotting: 1, drying: 1 };

/**
 * Spread of stores and lots about the usual rates, standard deviations of the logarithm. Set by hand so that about as many
 * published losses as should lie in their bands (docs/validation.md): sources differ fivefold in what dries away.
 */
const storeSpread: StoreDraw = { sprouting: 0.25, rotting: 0.8, drying: 0.6 };

/** One draw a season, evenly spread, apart from the draws of the seasons. */
export function storeDrawsOf(seasons: number, seed: number): StoreDraw[] {
  const random = randomSource(seed * 2 + 0x6b65);
  const sprouting = evenNormals(seasons, random);
  const rotting = evenNormals(seasons, random);
  const drying = evenNormals(seasons, random);
  return Array.from({ length: seasons }, (_, at) => storeDrawOf(sprouting[at], rotting[at], drying[at]));
}

/** The factors of so many standard deviations from the usual. */
export function storeDrawOf(sprouting: number, rotting: number, drying: number): StoreDraw {
  return {
    sprouting: Math.exp(storeSpread.sprouting * sprouting),
    rotting: Math.exp(storeSpread.rotting * rotting),
    drying: Math.exp(storeSpread.drying * drying),
  };
}
