import { useEffect, useState } from 'preact/hooks';
import { go } from '../../state/route.ts';

/** The address follows once the hand rests: browsers refuse one that changes with every pixel. */
const restMs = 250;

/** The start day: the one asked for, or where it is being moved to; and what moves it. */
export function useMovedDay(askedDay: number): [day: number, onDay: (day: number) => void] {
  const [moved, move] = useState<number | null>(null);
  useEffect(() => {
    if (moved === null) return;
    const rest = setTimeout(() => {
      go({ date: moved }, { replace: true });
      // a slow machine may have taken another move since, which this timer knows nothing of
      move((now) => (now === moved ? null : now));
    }, restMs);
    return () => clearTimeout(rest);
  }, [moved]);
  return [moved ?? askedDay, move];
}
