import { type CommonAxis, dayAtX, dayAxis, xOfDay } from '@neckfall/pictures';
import { useRef } from 'preact/hooks';
import type { Drawn } from './drawn-lines.ts';
import { movedDay, moveTo } from './moved-day.ts';
import { shownDay } from './shown-day.ts';

/** The line of the day, plumb through all pictures: it alone moves. */
export function Plumb({ drawn, width }: { drawn: Drawn; width: number }) {
  const { firstDay, days } = drawn.axis;
  const x = xOfDay(dayAxis(firstDay, days, width), shownDay(drawn, movedDay.value) + 0.5);
  return <div class="plumb" aria-hidden="true" style={{ insetInlineStart: `${(100 * x) / width}%` }} />;
}

/** Lets a finger or a mouse take the day on any picture and move it; for keys there is the slider. */
export function useDrag({ firstDay, days }: CommonAxis) {
  const isHeld = useRef(false);
  const take = (event: PointerEvent & { currentTarget: HTMLElement }) => {
    const svg = event.currentTarget.querySelector('svg');
    if (!svg) return;
    // a picture's px grow with the reader's text
    const box = svg.getBoundingClientRect();
    const width = svg.viewBox.baseVal.width;
    moveTo(dayAtX(dayAxis(firstDay, days, width), ((event.clientX - box.left) / box.width) * width));
  };
  const letGo = () => {
    isHeld.current = false;
  };
  return {
    onPointerDown: (event: PointerEvent & { currentTarget: HTMLElement }) => {
      if (event.button !== 0) return;
      isHeld.current = true;
      event.currentTarget.setPointerCapture(event.pointerId);
      take(event);
    },
    onPointerMove: (event: PointerEvent & { currentTarget: HTMLElement }) => {
      if (isHeld.current) take(event);
    },
    onPointerUp: letGo,
    onPointerCancel: letGo,
  };
}
