import { densityOf, planDefaults, type Spacing, spacingOf } from '@neckfall/engine';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { Asked } from '../address/address-form.ts';
import type { SeasonAheadAsked } from '../worker/season-ahead.ts';
import { practiceOf } from './place.ts';
import { asked } from './route.ts';

/** As many as are told of where nobody says how many. */
export const usualPlants = 100;

/** Distances asked for, and how many plants stand together; the usual where nothing is. */
export const spacing: ReadonlySignal<Spacing> = computed(() => spacingAsked(asked.value));

function spacingAsked({ rowDistance, plantDistance, perStation }: Asked): Spacing {
  return spacingOf({
    rowDistanceCm: rowDistance,
    plantDistanceCm: plantDistance,
    plantsPerStation: perStation,
  });
}

type Options = SeasonAheadAsked['options'];

/** All that the address says of how the crop is grown, the onion, its start and its day apart. */
export const planOptions: ReadonlySignal<Options> = computed(() => optionsOf(asked.value));

export function optionsOf(asked: Asked): Options {
  const { plantOut, setSize, setStore, nurseryTemp, lampHours } = asked;
  return {
    ...practiceOf(asked),
    plantOutDay: plantOut,
    densityPerM2: densityOf(spacingAsked(asked)),
    setSizeMm: setSize ?? planDefaults.setSizeMm,
    setStore: setStore ?? planDefaults.setStore,
    nurseryTempC: nurseryTemp,
    lampHours,
  };
}
