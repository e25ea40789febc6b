import type { Symptom, symptomTimes } from '@neckfall/engine';
import type { VNode } from 'preact';
import { ink } from '../drawing/ink.ts';
import { Body, Bulb, CutBulb, Dots, Ground, ill, Leaves, Lines } from './parts.tsx';

type Lifting = { [S in Symptom]: (typeof symptomTimes)[S] extends 'lifting' ? S : never }[Symptom];

/** A bulb with the soil drawn away from it, its neck at (32, 34). */
const sitting = 'M30 33C30 37 20 39 20 47C20 54 26 57 32 57C38 57 44 54 44 47C44 39 34 37 34 33Z';

/** What is seen when the crop is taken up. */
export const lifting: Readonly<Record<Lifting, () => VNode>> = {
  'no-bulb': () => (
    <>
      <Leaves d="M32 32C31 22 28 12 23 5M32 32C33 22 37 13 42 7M32 32C28 25 20 18 12 17M32 32C36 25 44 20 52 20" />
      <Body d="M29 30C29 40 28.5 48 27.5 52Q32 56 36.5 52C35.5 48 35 40 35 30Z" />
      <Lines d="M28 53q-2 4-5 7M32 55v7M36 53q2 4 5 7" wide={1.4} />
    </>
  ),
  'tops-stood': () => (
    <>
      <Leaves d="M32 35C31 24 29 13 25 4M32 35C33 24 36 14 40 6M32 35C28 28 21 20 14 16M32 35C36 28 43 22 50 19" />
      <Body d={sitting} />
      <Lines d="M32 39C27 43 27 52 31 56M32 39C37 43 37 52 33 56" wide={1} />
    </>
  ),
  'fell-early': () => (
    <>
      <Ground />
      <Leaves d="M25 35C28 26 38 27 59 42M25 35C29 30 40 32 56 45M25 35C27 24 40 18 57 34" />
      <Body d="M23.5 34C23.5 37 15 38 15 45C15 51 20 54 25 54C30 54 35 51 35 45C35 38 26.5 37 26.5 34Z" />
    </>
  ),
  small: () => (
    <>
      <Lines
        d="M30 9C30 17 10 20 10 38C10 50 21 56 32 56C43 56 54 50 54 38C54 20 34 17 34 9"
        stroke={ink.ink2}
        wide={1.6}
        dashed
      />
      <Lines d="M30 56q-1 3-2 4M34 56q1 3 2 4" wide={1.4} />
      <Body d="M31 33C31 37 24 38 24 46C24 52 28 55 32 55C36 55 40 52 40 46C40 38 33 37 33 33Z" />
    </>
  ),
  'thick-necks': () => (
    <>
      <Lines d="M28 54q-2 4-4 6M32 54v7M36 54q2 4 4 6" wide={1.4} />
      <Body d="M23 6V16C23 24 14 27 14 39C14 49 23 54 32 54C41 54 50 49 50 39C50 27 41 24 41 16V6Z" />
      <Lines
        d="M27.5 6V18C27.5 27 20 29 20 39C20 46 26 50 32 50C38 50 44 46 44 39C44 29 36.5 27 36.5 18V6M32 6V20C31 28 26 33 26 39C26 43 29 46 32 46C35 46 38 43 38 39C38 33 33 28 32 20"
        wide={1.2}
      />
      <Leaves d="M25 6L22 2M39 6L42 2" />
    </>
  ),
  split: () => (
    <>
      <Lines d="M22 54q-2 4-4 6M30 55v6M34 55v6M42 54q2 4 4 6" wide={1.4} />
      <Body d="M21 14C21 22 8 24 8 39C8 49 15 54 23 54C28 54 31 52 32 48C33 52 36 54 41 54C49 54 56 49 56 39C56 24 43 22 43 14H39C39 21 33 24 32 30C31 24 25 21 25 14Z" />
      <Lines
        d="M23 22C17 27 13 32 13 39C13 46 18 50 23 50C27 50 30 46 30 39C30 33 27 27 23 22M41 22C37 27 34 33 34 39C34 46 37 50 41 50C46 50 51 46 51 39C51 32 47 27 41 22"
        wide={1.2}
      />
    </>
  ),
  'stalk-in-bulb': () => (
    <>
      <CutBulb />
      <path
        d="M29.5 50C27 40 28.5 20 29.5 4H34.500C35.5 20 37 40 34.5 50Z"
        fill={ink.paper}
        stroke={ink.leaf}
        stroke-width={2.4}
      />
      <Lines d="M32 46V12" stroke={ink.leaf} wide={1} dashed />
    </>
  ),
  'green-shoulders': () => (
    <>
      <Bulb />
      <Lines
        d="M29 21L22 30M26 25L19 33M30 24L24 34M33 24L41 35M35 21L43 31M38 25L46 34M31 28L29 34M33 28L35 34"
        stroke={ink.leaf}
        wide={2.4}
      />
    </>
  ),
  scalded: () => (
    <>
      <Bulb />
      <path
        d="M37 27C47 28 49 37 44 42C38 43 34 36 37 27Z"
        fill={ink.paper2}
        stroke={ill.rot}
        stroke-width={1.8}
      />
      <Lines d="M39 32l5 1M39 36l5 1" stroke={ill.rot} wide={1.2} />
      <circle cx={54} cy={10} r={5} fill="none" stroke={ink.skin} stroke-width={1.8} />
      <Lines d="M46 8l-3-1M48 15l-3 3M54 18v4M61 16l1 2" stroke={ink.skin} wide={1.6} />
    </>
  ),
  soft: () => (
    <>
      <Body d="M29 22C30 28 11 30 11 44C11 52 21 55 32 55C44 55 54 52 53 43C52 33 46 36 42 32C38 28 34 28 33 21Z" />
      <Lines d="M18 40q4 5 2 9M28 36q-3 6 1 12M40 38q4 4 1 9" wide={1.2} />
      <Lines
        d="M20 55q-2 4 0 6q2-2 0-6M33 55q-2 5 0 7q2-2 0-7M45 54q-2 4 0 5q2-1 0-5"
        stroke={ill.rot}
        wide={1.6}
      />
      <Lines d="M42 20q3-3 0-7q-3-3 0-7M50 22q3-3 0-7q-3-3 0-7" stroke={ink.ink2} wide={1.4} />
    </>
  ),
  'white-fluff': () => (
    <>
      <Bulb roots={false} />
      <path
        d="M18 47q-5 1-4 6q1 4 6 3q0 5 6 4q3 4 6 0q3 4 6 0q6 1 6-4q5 1 6-3q1-5-4-6q-2-4-5-1q-3-4-6 0q-3-3-6 0q-4-3-6 1q-3-3-5 0Z"
        fill={ink.paper}
        stroke={ink.ink2}
        stroke-width={1.6}
      />
      <Dots
        r={1.5}
        at={[
          [22, 52],
          [28, 55],
          [34, 51],
          [40, 55],
          [44, 51],
        ]}
      />
    </>
  ),
  'pink-roots': () => (
    <>
      <g transform="translate(0 -8)">
        <Bulb roots={false} />
      </g>
      <Lines
        d="M25 44q-7 4-13 14M28 45q-4 7-8 16M31 45q-2 8-3 17M34 45q1 8 3 16M37 44q4 7 9 16M39 43q7 4 14 13"
        stroke={ill.red}
        wide={2.2}
      />
    </>
  ),
  maggots: () => (
    <>
      <Bulb roots={false} />
      <path d="M25 49q2-7 7-6q6 1 7 7q-7 5-14-1Z" fill={ink.ink2} />
      <g fill={ink.paper} stroke={ink.ink} stroke-width={1.5}>
        <path d="M28 44q5-5 9 0q-2 4-5 3q-3 0-4-3Z" />
        <path d="M17 58q5-6 10-1q-2 4-5 3q-3 1-5-2Z" />
        <path d="M38 57q6-5 10 1q-3 3-5 3q-3 0-5-4Z" />
      </g>
      <Lines d="M31 42v4M34 42v5M21 55v4M24 55v5M42 55v5M45 56v4" wide={1} />
    </>
  ),
  'too-hot': () => (
    <>
      <Body d="M6 40A20 20 0 0 1 46 40Z" />
      <Lines d="M11 40A15 15 0 0 1 41 40M16 40A10 10 0 0 1 36 40M21 40A5 5 0 0 1 31 40" wide={1.2} />
      <path
        d="M54 8C58 15 60 18 60 21A6 6 0 0 1 48 21C48 18 50 15 54 8Z"
        fill={ink.paper}
        stroke={ink.sky}
        stroke-width={2}
      />
      <path
        d="M52 42C55 47 56.5 49 56.5 51.500A4.5 4.5 0 0 1 47.5 51.500C47.5 49 49 47 52 42Z"
        fill={ink.paper}
        stroke={ink.sky}
        stroke-width={2}
      />
    </>
  ),
};
