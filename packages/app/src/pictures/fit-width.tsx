import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { nextTurn } from '../turns/next-turn.ts';

/** Hands a picture the width there is, px, and again when that changes. */
export function FitWidth({ children }: { children: (width: number) => ComponentChildren }) {
  const box = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState<number | null>(null);
  useLayoutEffect(() => {
    const element = box.current;
    if (!element) return;
    let stop = () => {};
    // measuring lays the page out, and drawing takes as long again: each in a task of its own
    const measure = () => {
      const found = Math.floor(element.clientWidth);
      stop();
      stop = nextTurn(() => setWidth(found));
    };
    stop = nextTurn(measure);
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => {
      stop();
      observer.disconnect();
    };
  }, []);
  return (
    <div ref={box} data-waiting={width === null ? true : undefined}>
      {width !== null && width > 0 && children(width)}
    </div>
  );
}
