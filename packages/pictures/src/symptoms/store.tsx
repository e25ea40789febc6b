import type { Symptom, symptomTimes } from '@neckfall/engine';
import type { VNode } from 'preact';
import { ink } from '../drawing/ink.ts';
import { Bulb, CutBulb, Dots, ill, Leaves, Lines, rings } from './parts.tsx';

type InStore = { [S in Symptom]: (typeof symptomTimes)[S] extends 'store' ? S : never }[Symptom];

/** What is seen in store. */
export const inStore: Readonly<Record<InStore, () => VNode>> = {
  'neck-rot': () => (
    <>
      <Bulb />
      <path d="M30 15C30 21 20 24 17.5 31C26 36 38 36 46.5 31C44 24 34 21 34 15Z" fill={ill.rot} />
      <Lines
        d="M29 17l-6-4M28 20l-7-2M25 23l-7-1M35 17l6-4M36 20l7-2M39 23l7-1M32 15v-7M22 26l-6 1M42 26l6 1"
        stroke={ink.ink2}
        wide={1.6}
      />
    </>
  ),
  'rotted-in-store': () => (
    <CutBulb>
      <path
        d={`${rings.outer}H31Z${rings.inner}`}
        fill={ill.rot}
        fill-rule="evenodd"
        stroke={ink.ink}
        stroke-width={1.2}
      />
      <Lines d="M14 58h36M20 62h24" stroke={ink.sky} wide={1.6} />
    </CutBulb>
  ),
  'black-dust': () => (
    <>
      <Bulb />
      <Dots
        r={1.7}
        at={[
          [28, 26],
          [36, 26],
          [24, 31],
          [32, 30],
          [40, 31],
          [21, 37],
          [28, 36],
          [36, 36],
          [43, 37],
          [25, 43],
          [39, 43],
          [32, 42],
        ]}
      />
    </>
  ),
  sprouted: () => (
    <>
      <Leaves d="M31 17C30 12 27 7 21 3M33 17C34 11 37 6 43 3M32 17V6" />
      <Bulb />
    </>
  ),
  glassy: () => (
    <>
      <circle cx={28} cy={36} r={22} fill={ink.paper} stroke={ink.ink} stroke-width={1.8} />
      <g fill="none" stroke={ink.sky} stroke-width={1.6}>
        <circle cx={28} cy={36} r={18} />
        <circle cx={28} cy={36} r={14} />
      </g>
      <Lines
        d="M12 27l4 2M10 34l5 1M11 42l4-1M16 50l3-3M41 22l-3 4M46 30l-5 2M45 42l-4-1M39 51l-3-4M28 16v5M28 51v5"
        stroke={ink.sky}
        wide={1.6}
      />
      <circle cx={28} cy={36} r={9} fill={ink.paper} stroke={ink.ink} stroke-width={1.2} />
      <circle cx={28} cy={36} r={4} fill="none" stroke={ink.ink} stroke-width={1.2} />
      <Lines d="M55 4v14M49 7.500l12 7M61 7.500l-12 7" stroke={ink.sky} wide={1.6} />
    </>
  ),
};
