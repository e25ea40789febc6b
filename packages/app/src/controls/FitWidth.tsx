import { pxPerRem } from '@neckfall/pictures';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { nextTurn } from '../turns/next-turn.ts';

/** No screen leaves a picture less, px: what is narrower is a fold just opening or closing. */
const leastWidth = 120;

/** Hands a picture the width there is, in its own px, and again when that or the reader's text size changes. */
export function FitWidth({ children }: { children: (width: number) => ComponentChildren }) {
  const box = useRef<HTMLDivElement>(null);
  const rem = useRef<HTMLSpanElement>(null);
  const [width, setWidth] = useState<number | null>(null);
  useLayoutEffect(() => {
    const [element, measure] = [box.current, rem.current];
    if (!element || !measure) return;
    let stop = () => {};
    // measuring lays the page out, and drawing takes as long again: each in a task of its own
    const look = () => {
      const found = Math.floor((element.clientWidth / measure.getBoundingClientRect().width) * pxPerRem);
      stop();
      stop = nextTurn(() => setWidth(found));
    };
    stop = nextTurn(look);
    const observer = new ResizeObserver(look);
    observer.observe(element);
    observer.observe(measure);
    return () => {
      stop();
      observer.disconnect();
    };
  }, []);
  return (
    <div ref={box} class="fit" data-waiting={width === null ? true : undefined}>
      <span ref={rem} class="one-rem" />
      {width !== null && width >= leastWidth && children(width)}
    </div>
  );
}
