import { classOfType } from '@neckfall/engine';
import type { Cultivar } from './cultivar.ts';

type Keeping = { months: readonly [number, number]; dryMatterShare: number };

/**
 * Months an onion keeps dry, cool and airy, and its dry matter, by kind. All memory: sweet onions 6–9 % dry matter,
 * storage onions 10–14 %; what was published for an onion goes before.
 */
const usual = {
  sweet: { months: [1, 2], dryMatterShare: 0.08 },
  overwintered: { months: [2, 3], dryMatterShare: 0.09 },
  spanish: { months: [3, 4], dryMatterShare: 0.09 },
  grano: { months: [2, 3], dryMatterShare: 0.08 },
  creole: { months: [3, 5], dryMatterShare: 0.12 },
  globe: { months: [5, 7], dryMatterShare: 0.11 },
  hard: { months: [8, 10], dryMatterShare: 0.13 },
} as const satisfies Record<string, Keeping>;

/** How an onion keeps by its type, use and taste. */
export function usualKeeping({
  kind,
  type,
  uses,
  mild,
}: Pick<Cultivar, 'kind' | 'type' | 'uses' | 'mild'>): Keeping {
  const isShort = classOfType[type] === 'short';
  if (uses.includes('storage')) return isShort ? usual.creole : usual.hard;
  if (kind !== 'bulb-onion') return isShort ? usual.creole : usual.globe;
  if (uses.includes('sweet')) return usual.sweet;
  if (uses.includes('overwinters')) return usual.overwintered;
  if (isShort && mild) return usual.sweet;
  // where the taste is not known: short-day onions of mild winters are mostly mild, those of the tropics pungent
  if (isShort) return mild === null && type === 'short' ? usual.grano : usual.creole;
  return uses.includes('spanish') || mild ? usual.spanish : usual.globe;
}
