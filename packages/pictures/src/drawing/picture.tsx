import type { ComponentChildren } from 'preact';
import { ink } from './ink.ts';
import { px } from './path.ts';

/**
 * Font sizes of all pictures, px: a picture's px are those of a page whose text is of the usual size, and grow with the
 * reader's. Pictures are laid out for the width they get, so text never shrinks.
 */
export const type = { text: 15.5, small: 14 } as const;
/** From one line of small words to the next, px. */
export const lineHeight = 17;

/** A picture's px to a page's rem, at the usual text size of base.css. */
export const pxPerRem = 18;

/** What makes a picture as wide as it was laid out, in rem. The rest stands in pages.css. */
export function wideAs(width: number) {
  return { '--wide': `${px(width / pxPerRem)}rem` };
}

export type Size = { width: number; height: number };

/** An SVG with one label for those who don't see it; its numbers stand in a table beside it. */
export function Picture(props: Size & { name: string; summary: string; children: ComponentChildren }) {
  const { width, height, name, summary, children } = props;
  return (
    <figure class={`picture ${name}`} role="img" aria-label={summary}>
      <svg
        class="picture-svg"
        aria-hidden="true"
        viewBox={`0 0 ${px(width)} ${px(height)}`}
        width={px(width)}
        height={px(height)}
        font-size={type.text}
        style={wideAs(width)}
      >
        {children}
      </svg>
    </figure>
  );
}

type LabelProps = {
  x: number;
  y: number;
  children: string;
  anchor?: 'start' | 'middle' | 'end';
  small?: boolean;
  bold?: boolean;
  fill?: string;
  /** Colour it stands on: lines behind the letters are kept off. */
  on?: string | null;
};

export function Label(props: LabelProps) {
  const {
    x,
    y,
    children,
    anchor = 'start',
    small = false,
    bold = false,
    fill = ink.ink,
    on = ink.paper,
  } = props;
  const halo = on
    ? { stroke: on, 'stroke-width': 4, 'stroke-linejoin': 'round' as const, 'paint-order': 'stroke' }
    : {};
  return (
    <text
      x={px(x)}
      y={px(y)}
      text-anchor={anchor}
      font-size={small ? type.small : type.text}
      font-weight={bold ? 600 : 400}
      fill={fill}
      {...halo}
    >
      {children}
    </text>
  );
}
