import { normalQuantile } from './normal.ts';
import type { RandomSource } from './random.ts';

/** A third of them is as evenly spread as all: a first look takes so many (sliced Latin hypercube, Qian 2012). */
const slices = 3;

/** Standard normal quantiles at the middles of equal shares, mixed; each slice of them is spread over all. */
export function evenNormals(count: number, random: RandomSource): number[] {
  const perSlice = Math.ceil(count / slices);
  const offsets = shuffled(slices, random);
  const shares = offsets.flatMap((offset) =>
    shuffled(perSlice, random).map((at) => (at + (offset + 0.5) / slices) / perSlice),
  );
  return shares.slice(0, count).map(normalQuantile);
}

/** 0…count − 1 in chance order (Fisher & Yates 1938). */
export function shuffled(count: number, random: RandomSource): number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const other = Math.floor(random.uniform() * (i + 1));
    [order[i], order[other]] = [order[other], order[i]];
  }
  return order;
}
