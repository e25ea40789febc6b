import { planDefaults } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { SeasonAheadAsked } from '../worker/season-ahead.ts';
import { practice } from './place.ts';
import { asked } from './route.ts';

/** Usual distances, cm: together the usual 40 plants a square metre (common practice, no source). */
export const usualSpacing = { rowCm: 25, plantCm: 10 } as const;

export const spacing: ReadonlySignal<{ rowCm: number; plantCm: number }> = computed(() => ({
  rowCm: asked.value.rowDistance ?? usualSpacing.rowCm,
  plantCm: asked.value.plantDistance ?? usualSpacing.plantCm,
}));

const cm2PerM2 = 10_000;

/** All that the address says of how the crop is grown, the onion, its start and its day apart. */
export const planOptions: ReadonlySignal<SeasonAheadAsked['options']> = computed(() => {
  const { plantOut, rowDistance, plantDistance, setSize, setStore, nurseryTemp, lampHours } = asked.value;
  const { rowCm, plantCm } = spacing.value;
  const isUsual = rowDistance === null && plantDistance === null;
  return {
    ...practice.value,
    plantOutDay: plantOut,
    densityPerM2: isUsual ? planDefaults.densityPerM2 : cm2PerM2 / (rowCm * plantCm),
    setSizeMm: setSize ?? planDefaults.setSizeMm,
    setStore: setStore ?? planDefaults.setStore,
    nurseryTempC: nurseryTemp,
    lampHours,
  };
});
