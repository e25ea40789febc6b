import {
  type KeepLot,
  type KeepYear,
  neededFor,
  standFigures,
  standOf,
  usualSpacing,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { isGreenLot, keepNames, ofLot } from './keep-lots.ts';

/** What a lot, or all of them, asks to have at hand; weights from the least to the most. */
export type ShoppingItem =
  | { what: 'seeds'; lot: KeepLot; at: number; count: number; grams: readonly [number, number] }
  | {
      what: 'sets';
      lot: KeepLot;
      at: number;
      count: number;
      setSizeMm: number;
      grams: readonly [number, number];
    }
  | { what: 'bundles'; lot: KeepLot; at: number; count: number; plants: number }
  | { what: 'trays'; lot: null; count: number; compostL: number }
  | { what: 'labels'; lot: null; count: number };

export function shoppingOf({ lots }: KeepYear): ShoppingItem[] {
  if (lots.length === 0) return [];
  const sum = (of: 'trayCells' | 'compostL') => lots.reduce((total, { need }) => total + (need[of] ?? 0), 0);
  const cells = sum('trayCells');
  const stored = lots.filter((lot) => !isGreenLot(lot)).length;
  return [
    ...lots.flatMap(startOf),
    ...(cells > 0 ? [{ what: 'trays', lot: null, count: cells, compostL: sum('compostL') } as const] : []),
    ...(stored > 0 ? [{ what: 'labels', lot: null, count: stored } as const] : []),
  ];
}

function startOf(lot: KeepLot, at: number): ShoppingItem[] {
  const { need, plan, summary } = lot;
  if (need.seeds !== null) {
    const [few, many] = standFigures.seedsPerGram.value;
    return [{ what: 'seeds', lot, at, count: need.seeds, grams: [need.seeds / many, need.seeds / few] }];
  }
  if (need.bundles !== null) return [{ what: 'bundles', lot, at, count: need.bundles, plants: need.plants }];
  if (need.sets === null || plan.start !== 'sets') return [];
  const { setSizeMm } = plan;
  const how = { start: plan.start, seedAge: null, setSizeMm, emergedShare: summary.emergedShare };
  const needed = neededFor(standOf(need.sets, usualSpacing), usualSpacing, how);
  if (needed?.from !== 'sets') return [];
  const [light, heavy] = needed.kg;
  return [{ what: 'sets', lot, at, count: need.sets, setSizeMm, grams: [1000 * light, 1000 * heavy] }];
}

/** What to get, and for which lot. */
export function shoppingSentence(item: ShoppingItem, country: string | null, speaker: Speaker): string {
  const what = whatToGet(item, country, speaker);
  return item.lot ? ofLot(item.at, what, speaker) : what;
}

function whatToGet(item: ShoppingItem, country: string | null, speaker: Speaker): string {
  const { say, quantity, quantityRange } = speaker;
  const of = item.lot && {
    type: say(`type.${item.lot.kind.type}`),
    names: keepNames(item.lot, country, speaker),
  };
  switch (item.what) {
    case 'seeds':
      return say('keep.shop.seeds', {
        ...of,
        count: item.count,
        mass: quantityRange('seedMass', ...item.grams),
      });
    case 'sets':
      return say('keep.shop.sets', {
        ...of,
        count: item.count,
        size: quantity('bulbLength', item.setSizeMm),
        mass: massOf(item.grams, speaker),
      });
    case 'bundles':
      return say('keep.shop.bundles', { ...of, count: item.count, plants: item.plants });
    case 'trays':
      return say('keep.shop.trays', { cells: item.count, compost: quantity('water', item.compostL) });
    case 'labels':
      return say('keep.shop.labels', { count: item.count });
  }
}

/** From here on sets are weighed in kilograms or pounds, g. */
const heavyG = 1000;

function massOf([light, heavy]: readonly [number, number], { quantityRange }: Speaker): string {
  return heavy < heavyG
    ? quantityRange('bulbMass', light, heavy)
    : quantityRange('crop', light / 1000, heavy / 1000);
}
