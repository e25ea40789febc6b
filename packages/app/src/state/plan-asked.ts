import { civilDate, planDefaults } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { SeasonAheadAsked } from '../worker/season-ahead.ts';
import { onion } from './onion.ts';
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

/** The onion and its start as far as the address names them. */
export const cropAsked: ReadonlySignal<Pick<SeasonAheadAsked, 'crop' | 'starts' | 'start' | 'startDay'>> =
  computed(() => {
    const { crop, starts } = onion.value;
    const { start, date } = asked.value;
    // days to maturity count in the year of the start, where one is named
    const ofYear = crop && 'packet' in crop && date !== null ? { ...crop, year: civilDate(date).year } : crop;
    return {
      crop: ofYear,
      starts,
      start: start !== null && starts.includes(start) ? start : null,
      startDay: date,
    };
  });
