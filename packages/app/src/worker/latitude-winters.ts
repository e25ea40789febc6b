import { type LatitudeClimates, type SameWinter, sameWinter } from '@neckfall/engine';
import type { Work } from './protocol.ts';

export type WintersAsked = { climates: LatitudeClimates; side: 1 | -1; from: number };

const found = new Map<string, SameWinter | null>();

/** Two latitudes with one coldest night and opposite kinds; null where there are none. */
export async function latitudeWinters(
  { climates, side, from }: WintersAsked,
  work: Work,
): Promise<SameWinter | null> {
  const key = `${side} ${from}`;
  const known = found.get(key);
  if (known !== undefined) return known;
  const steps = sameWinter(climates, side, from);
  for (;;) {
    const step = steps.next();
    if (step.done) {
      found.set(key, step.value);
      return step.value;
    }
    await work.pause();
  }
}
