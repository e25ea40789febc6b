import type { Symptom, symptomTimes } from '@neckfall/engine';
import type { VNode } from 'preact';
import { ink } from '../drawing/ink.ts';
import { Blade, Body, Ground, groundY, ill, Leaves, Lines, standing } from './parts.tsx';

type Growing = { [S in Symptom]: (typeof symptomTimes)[S] extends 'growing' ? S : never }[Symptom];

/** A seedling that has come up, still bent over like a crook. */
const seedling = (x: number) => `M${x} ${groundY}V31c0-6 7-7 8-1l1 6`;

/** What is seen while the crop grows. */
export const growing: Readonly<Record<Growing, () => VNode>> = {
  'few-came-up': () => (
    <>
      <Ground />
      <Leaves d={seedling(9) + seedling(47)} />
      <Lines
        d="M19 53a3 2 0 1 0 6 0a3 2 0 1 0-6 0M29 53a3 2 0 1 0 6 0a3 2 0 1 0-6 0M38 53a3 2 0 1 0 6 0a3 2 0 1 0-6 0"
        wide={1.4}
      />
      <Lines d="M22 43v-9M32 43v-9M41 43v-9" stroke={ink.ink2} dashed />
    </>
  ),
  'seedlings-toppled': () => (
    <>
      <Ground />
      <Leaves d={seedling(8)} />
      <Leaves d="M28 44C30 36 38 36 45 43M48 44C50 37 55 37 60 42" />
      <Lines d={`M27.5 ${groundY}L28 44M47.5 ${groundY}L48 44`} stroke={ill.rot} wide={1.6} />
    </>
  ),
  'gone-in-a-row': () => (
    <>
      <Ground />
      <Leaves d={standing(11, 0.45) + standing(53, 0.45)} />
      <Leaves d={`M25 ${groundY}v-6M39 ${groundY}v-5`} />
      <Lines d="M22 41l6-2M36 41l6 1" />
    </>
  ),
  'died-in-winter': () => (
    <>
      <Ground />
      <Leaves
        stroke={ill.rot}
        d={`M32 ${groundY}C26 38 16 38 6 44M32 ${groundY}C38 38 48 38 58 44M32 ${groundY}C31 40 27 36 21 34`}
      />
      <Lines d="M44 6v20M35.3 11l17.4 10M52.7 11l-17.4 10M41 8l3 3l3-3M41 24l3-3l3 3" stroke={ink.sky} />
      <Lines d="M12 12v8M8.5 14l7 4M15.5 14l-7 4" stroke={ink.sky} wide={1.4} />
    </>
  ),
  'out-of-the-ground': () => (
    <>
      <Lines d={`M3 ${groundY}H15C17 57 29 57 31 ${groundY}H61`} stroke={ink.earth} wide={2.2} />
      <g transform="rotate(-62 44 38)">
        <Lines d="M41 46q-2 4-3 6M44 46v7M47 46q2 4 3 6" wide={1.4} />
        <Body d="M43 22C43 27 35 29 35 37C35 43 40 46 44 46C48 46 53 43 53 37C53 29 45 27 45 22Z" />
      </g>
      <Leaves d="M31 30C24 26 17 26 10 31" />
    </>
  ),
  'dry-tips': () => (
    <>
      <Ground />
      <Leaves
        d={`M32 ${groundY}C31 38 30 30 28 24M32 ${groundY}C33 38 35 31 38 26M32 ${groundY}C28 41 23 36 18 32M32 ${groundY}C36 41 42 37 47 35`}
      />
      <Lines
        d="M28 24C27 18 25 12 20 10M38 26C41 20 44 15 51 15M18 32C14 29 9 28 6 31M47 35C52 33 57 34 59 38"
        stroke={ill.rot}
        wide={2.4}
        dashed
      />
    </>
  ),
  'silver-streaks': () => (
    <>
      <Blade />
      <Lines
        d="M27 52V41M32 56V46M32 41V28M27 36V27M37 51V40M37 33V20M33 23v-8M41 44V33"
        stroke={ink.ink2}
        wide={2}
      />
      <Lines d="M50 22l4-6M51 17l2 2M52 14l2 2" wide={1.6} />
    </>
  ),
  'grey-fur': () => (
    <>
      <Blade />
      <Lines
        d="M24 40l-8-5M23.5 36l-9-3M24 32l-8-1M25 28l-7 1M42 38l8-6M43 34l8-4M43 30l9-2M43 26l8 0M30 40l2-6M34 42l2-7M29 33l3-6M36 35l2-7M34 29l2-5M30 46l1-4"
        stroke={ink.ink2}
        wide={1.6}
      />
    </>
  ),
  'purple-spots': () => (
    <>
      <Blade />
      {[
        [32, 36, 1],
        [36, 18, 0.55],
        [30, 53, 0.55],
      ].map(([x, y, size]) => (
        <g key={y} fill="none" stroke={ill.red} stroke-width={1.8}>
          <ellipse cx={x} cy={y} rx={7 * size} ry={10 * size} />
          <ellipse cx={x} cy={y} rx={3.6 * size} ry={5.6 * size} />
          <circle cx={x} cy={y} r={1.2} fill={ill.red} stroke="none" />
        </g>
      ))}
    </>
  ),
  'bent-leaves': () => (
    <>
      <Ground />
      <Leaves d={`M32 ${groundY}L29 22L11 32M32 ${groundY}L37 26L54 38M32 ${groundY}C32 30 33 20 36 8`} />
    </>
  ),
  wilted: () => (
    <>
      <Ground />
      <Leaves
        stroke={ink.leaf}
        d={`M32 ${groundY}C30 28 18 20 8 40M32 ${groundY}C34 28 46 20 56 40M32 ${groundY}C31 34 25 28 19 44M32 ${groundY}C33 34 40 29 45 44`}
      />
      <Lines d="M46 5a6 6 0 1 0 12 0M44 13l-3 3M52 15v5M60 13l2 3" stroke={ink.skin} wide={1.6} />
    </>
  ),
  flowered: () => (
    <>
      <Ground />
      <Leaves d={`M32 ${groundY}C26 38 18 32 10 31M32 ${groundY}C38 38 46 33 54 33`} />
      <path
        d={`M30 ${groundY}C27 38 27 32 30 22H34C37 32 37 38 34 ${groundY}Z`}
        fill={ink.paper}
        stroke={ink.leaf}
        stroke-width={2.2}
      />
      <circle cx={32} cy={13} r={10} fill={ink.paper} stroke={ink.ink} stroke-width={1.8} />
      <Lines d="M32 22L32 6M32 22L25 8M32 22L39 8M32 22L23.5 14M32 22L40.5 14" wide={1} />
    </>
  ),
};
