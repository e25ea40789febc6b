import { useEffect, useState } from 'preact/hooks';
import { nextTurn } from '../../turns/next-turn.ts';
import { askLine, type LineAsked, type LineKnown } from './line-asked.ts';

/** Lines worked out since the page was opened, so that one that is moved, or comes back, is there at once. */
const known = new Map<string, LineKnown>();
const mostKept = 60;

/** What is known of each line; null while it is being worked out. They are asked one after the other, and come so. */
export function useLines(wanted: readonly LineAsked[]): (LineKnown | null)[] {
  const [, again] = useState(0);
  const key = wanted.map((line) => line.key).join('\n');
  useEffect(() => {
    let isGone = false;
    void (async () => {
      for (const line of wanted) {
        // what failed is tried again
        if ((known.get(line.key)?.state ?? 'failed') !== 'failed') continue;
        const found = await askLine(line);
        if (found) keep(line.key, found);
        if (isGone || !found) return;
        // reading the answer took a task; showing it takes another
        nextTurn(() => again((turn) => turn + 1));
      }
    })();
    return () => {
      isGone = true;
    };
  }, [key]);
  return wanted.map((line) => known.get(line.key) ?? null);
}

function keep(key: string, found: LineKnown): void {
  if (known.size >= mostKept) known.delete(known.keys().next().value!);
  known.set(key, found);
}
