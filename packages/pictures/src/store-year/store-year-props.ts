/** One month's string of onions; amounts in bulbs, each what the kitchen eats in a week. */
export type StoreMonth = {
  name: string;
  days: number;
  /** Of each lot, in store at its end. */
  kept: readonly number[];
  eaten: number;
  lost: number;
  /** In store at its end, all lots together, in a poor and in a good year. */
  span: readonly [number, number];
};

/** Days on which nothing is in store, as parts of the months: from 1.5, the middle of the second. */
export type StoreGap = { from: number; to: number; text: string };

export type StoreYearProps = {
  width: number;
  months: readonly StoreMonth[];
  gaps: readonly StoreGap[];
  /** What the lots are called. */
  lots: readonly string[];
  /** What the kitchen eats in a month, in bulbs. */
  need: number;
  words: { week: string; eaten: string; lost: string; need: string; span: string };
  summary: string;
};
