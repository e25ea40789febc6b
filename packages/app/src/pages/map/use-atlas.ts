import type { DayNumber, GridPoint, Region } from '@neckfall/engine';
import { useEffect, useState } from 'preact/hooks';
import { nextTurn } from '../../turns/next-turn.ts';
import { type AtlasHeld, atlasHeld } from './atlas-held.ts';
import { runAtlas } from './atlas-run.ts';

/** How far a map has come. */
type Progress = {
  /** Step of the finest grid of which all is known, degrees; null before the first. */
  wholeDeg: number | null;
  /** Grid at work, with points that are still to be worked out; null when none is. */
  working: { stepDeg: number; left: number } | null;
  failed: string | null;
};

export type Atlas = Progress & {
  held: AtlasHeld;
  isStopped: boolean;
  stop: () => void;
  goOn: () => void;
};

/** Who is told of points as they come: of some on a grid, or that all of a grid are known. */
export type Listener = { found: (points: readonly GridPoint[], stepDeg: number) => void };

const nothingYet: Progress = { wholeDeg: null, working: null, failed: null };

/** Works a region out for as long as the page shows it. @param key changes when the region or its steps do */
export function useAtlas(
  key: string,
  region: Region,
  steps: readonly number[],
  today: DayNumber,
  listener: { current: Listener | null },
): Atlas {
  const held = atlasHeld(today);
  const [kept, setKept] = useState<{ key: string; progress: Progress }>({ key, progress: nothingYet });
  const progress = kept.key === key ? kept.progress : nothingYet;
  const [isStopped, setStopped] = useState(false);
  useEffect(() => {
    if (isStopped) return;
    let isGone = false;
    const setProgress = (change: (now: Progress) => Progress) =>
      setKept((last) => ({ key, progress: change(last.key === key ? last.progress : nothingYet) }));
    // what came is counted in a task of its own, and many at once
    let left = 0;
    let counting: (() => void) | null = null;
    const count = (stepDeg: number) => {
      counting ??= nextTurn(() => {
        counting = null;
        if (!isGone) setProgress((now) => ({ ...now, working: { stepDeg, left } }));
      });
    };
    const stop = runAtlas(region, steps, held, {
      begin(stepDeg, missing) {
        left = missing;
        if (missing > 0) count(stepDeg);
      },
      found(points, stepDeg) {
        left -= points.length;
        listener.current?.found(points, stepDeg);
        count(stepDeg);
      },
      done(stepDeg) {
        counting?.();
        counting = null;
        if (!isGone) setProgress(() => ({ wholeDeg: stepDeg, working: null, failed: null }));
      },
      failed: (failed) => setProgress((now) => ({ ...now, working: null, failed })),
    });
    return () => {
      isGone = true;
      counting?.();
      stop();
    };
  }, [key, held, isStopped]);
  return { ...progress, held, isStopped, stop: () => setStopped(true), goOn: () => setStopped(false) };
}
