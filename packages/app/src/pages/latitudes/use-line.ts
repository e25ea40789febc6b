import type { LatitudeClimates } from '@neckfall/engine';
import type { BestOfDegree } from '@neckfall/pictures';
import { useEffect, useState } from 'preact/hooks';
import { askLong } from '../../ask/ask.ts';
import { nextTurn } from '../../turns/next-turn.ts';

type Line = { known: readonly BestOfDegree[]; isWhole: boolean };

/** What does best at each degree at one warmth, the coarse line first; an older one stands until then. */
export function useLine(climates: LatitudeClimates, side: 1 | -1, warmerC: number, from: number): Line {
  const key = `${side} ${warmerC} ${from}`;
  const [held, hold] = useState<(Line & { key: string }) | null>(null);
  useEffect(() => {
    let isGone = false;
    const take = (known: readonly BestOfDegree[], isWhole: boolean) =>
      nextTurn(() => isGone || hold({ key, known, isWhole }));
    askLong('latitudeLine', { climates, side, warmerC, from }, { part: (known) => take(known, false) }).then(
      (reply) => reply.state === 'done' && take(reply.answer, true),
    );
    return () => {
      isGone = true;
    };
  }, [key]);
  return { known: held?.known ?? [], isWhole: held?.key === key && held.isWhole };
}
