import { ink } from '../drawing/ink.ts';
import type { Trouble } from './start-hills-props.ts';

/** Each trouble has a texture of its own, drawn after what it looks like, so that colour alone says nothing. */
export function TroublePatterns({ id }: { id: string }) {
  return (
    <>
      <pattern id={`${id}-small`} width={9} height={9} patternUnits="userSpaceOnUse">
        <circle cx={2.5} cy={2.5} r={1.6} fill={ink.skin} />
        <circle cx={7} cy={7} r={1.6} fill={ink.skin} />
      </pattern>
      <pattern id={`${id}-not-ripe`} width={8} height={10} patternUnits="userSpaceOnUse">
        <path d="M2 0V10M6 0V10" stroke={ink.leaf} stroke-width={2.2} />
      </pattern>
      <pattern id={`${id}-no-bulb`} width={10} height={10} patternUnits="userSpaceOnUse">
        <path
          d="M5 9V4M5 5Q3 3 2 1M5 5Q7 3 8 1"
          stroke={ink.leaf}
          stroke-width={1.2}
          fill="none"
          stroke-linecap="round"
        />
      </pattern>
      <pattern id={`${id}-bolts`} width={15} height={18} patternUnits="userSpaceOnUse">
        <path d="M4 11V4.5M11.5 17.5V11" stroke={ink.alarm} stroke-width={1} />
        <circle cx={4} cy={3} r={1.8} fill={ink.alarm} />
        <circle cx={11.5} cy={9.5} r={1.8} fill={ink.alarm} />
      </pattern>
      <pattern
        id={`${id}-winter-killed`}
        width={5}
        height={5}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d="M0 0V5" stroke={ink.sky} stroke-width={2.4} />
      </pattern>
      <pattern id={`${id}-barred`} width={7} height={7} patternUnits="userSpaceOnUse">
        <path d="M1.5 5.5L5.5 1.5M1.5 1.5L5.5 5.5" stroke={ink.ink2} stroke-width={0.9} />
      </pattern>
    </>
  );
}

export const troubleFill = (id: string, trouble: Trouble | 'barred') => `url(#${id}-${trouble})`;
