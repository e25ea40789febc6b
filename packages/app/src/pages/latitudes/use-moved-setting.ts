import { useEffect, useState } from 'preact/hooks';
import { go } from '../../state/route.ts';
import { addressOf, type Setting } from './setting.ts';

/** The address follows once the hand rests: browsers refuse one that changes with every pixel. */
const restMs = 250;

/** The setting asked for, or where it is being moved to; and what moves it. */
export function useMovedSetting(asked: Setting): [Setting, onMove: (setting: Setting) => void] {
  const [moved, move] = useState<Setting | null>(null);
  useEffect(() => {
    if (moved === null) return;
    const rest = setTimeout(() => {
      go(addressOf(moved), { replace: true });
      // a slow machine may have taken another move since, which this timer knows nothing of
      move((now) => (now === moved ? null : now));
    }, restMs);
    return () => clearTimeout(rest);
  }, [moved]);
  return [moved ?? asked, move];
}
