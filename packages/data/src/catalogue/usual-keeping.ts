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
  shortDay: { months: [3, 5], dryMatterShare: 0.12 },
  globe: { months: [5, 7], dryMatterShare: 0.11 },
  hard: { months: [8, 10], dryMatterShare: 0.13 },
} as const satisfies Record<string, Keeping>;

/** How an onion keeps by its kind, use and taste. */
export function usualKeeping({
  kind,
  class: dayLengthClass,
  uses,
  mild,
}: Pick<Cultivar, 'kind' | 'class' | 'uses' | 'mild'>): Keeping {
  if (uses.includes('storage')) return dayLengthClass === 'short' ? usual.shortDay : usual.hard;
  if (kind !== 'bulb-onion') return dayLengthClass === 'short' ? usual.shortDay : usual.globe;
  if (uses.includes('sweet')) return usual.sweet;
  if (uses.includes('overwinters')) return usual.overwintered;
  if (dayLengthClass === 'short') return mild ? usual.sweet : usual.shortDay;
  return uses.includes('spanish') || mild ? usual.spanish : usual.globe;
}
