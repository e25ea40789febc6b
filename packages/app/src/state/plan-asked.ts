import { planDefaults } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { Asked } from '../address/address-form.ts';
import type { SeasonAheadAsked } from '../worker/season-ahead.ts';
import { practiceOf } from './place.ts';
import { asked } from './route.ts';

/** Usual distances, cm: together the usual 40 plants a square metre (common practice, no source). */
export const usualSpacing = { rowCm: 25, plantCm: 10 } as const;

type Spacing = { rowCm: number; plantCm: number };

export const spacing: ReadonlySignal<Spacing> = computed(() => spacingOf(asked.value));

function spacingOf({ rowDistance, plantDistance }: Asked): Spacing {
  return { rowCm: rowDistance ?? usualSpacing.rowCm, plantCm: plantDistance ?? usualSpacing.plantCm };
}

const cm2PerM2 = 10_000;

type Options = SeasonAheadAsked['options'];

/** All that the address says of how the crop is grown, the onion, its start and its day apart. */
export const planOptions: ReadonlySignal<Options> = computed(() => optionsOf(asked.value));

export function optionsOf(asked: Asked): Options {
  const { plantOut, rowDistance, plantDistance, setSize, setStore, nurseryTemp, lampHours } = asked;
  const { rowCm, plantCm } = spacingOf(asked);
  const isUsual = rowDistance === null && plantDistance === null;
  return {
    ...practiceOf(asked),
    plantOutDay: plantOut,
    densityPerM2: isUsual ? planDefaults.densityPerM2 : cm2PerM2 / (rowCm * plantCm),
    setSizeMm: setSize ?? planDefaults.setSizeMm,
    setStore: setStore ?? planDefaults.setStore,
    nurseryTempC: nurseryTemp,
    lampHours,
  };
}
