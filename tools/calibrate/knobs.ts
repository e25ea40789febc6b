import {
  type GrowthValues,
  growthParameters,
  type OnionType,
  onionTypes,
  type PlantValues,
  type TypeValues,
  typeParameters,
} from '../../packages/engine/src/index.ts';

/** A number the fit may move between `low` and `high`; types listed together share one value. */
export type Knob = { low: number; high: number } & (
  | { of: 'growth'; parameter: keyof GrowthValues }
  | { of: 'type'; parameter: keyof TypeValues; types: readonly OnionType[] }
);

const shorter: readonly OnionType[] = ['tropical-short', 'short'];
const longer: readonly OnionType[] = ['intermediate', 'early-long', 'northern-long'];
const beforeNorthern: readonly OnionType[] = onionTypes.filter((type) => type !== 'northern-long');
const apart: readonly (readonly OnionType[])[] = onionTypes.map((type) => [type]);

/** What moves dates and sizes. */
export const growthKnobs: readonly Knob[] = [
  ...(['phyllochron', 'bulbingRate', 'setRipeningFactor', 'radiationUseGMJ', 'setSizePower'] as const).map(
    growthKnob,
  ),
  ...apart.map((types) => typeKnob('criticalPhotoperiodH', types)),
  typeKnob('photoperiodPerH', ['intermediate']),
  typeKnob('photoperiodPerH', ['early-long', 'northern-long']),
  ...apart.map((types) => typeKnob('ripeningTT', types)),
  typeKnob('ripeningPhotoperiodSlope', beforeNorthern),
];

/** What moves the share of plants that flower. */
export const boltingKnobs: readonly Knob[] = [
  typeKnob('vernalHalfD', shorter),
  typeKnob('vernalHalfD', longer),
  typeKnob('vernalSpreadD', onionTypes),
  typeKnob('boltingSizeG', shorter),
  typeKnob('boltingSizeG', longer),
];

/** All that a fit moves. */
export const allKnobs: readonly Knob[] = [...growthKnobs, ...boltingKnobs];

function growthKnob(parameter: keyof GrowthValues): Knob {
  return { of: 'growth', parameter, ...meet([growthParameters[parameter]]) };
}

function typeKnob(parameter: keyof TypeValues, types: readonly OnionType[]): Knob {
  const bounds = types.map((type) => typeParameters[parameter][type]);
  return { of: 'type', parameter, types, ...meet(bounds) };
}

/** What all bounds allow: a knob never leaves those of its parameter. */
function meet(bounds: readonly { low: number; high: number }[]) {
  return { low: Math.max(...bounds.map((of) => of.low)), high: Math.min(...bounds.map((of) => of.high)) };
}

export function knobName(knob: Knob): string {
  return knob.of === 'growth' ? knob.parameter : `${knob.parameter} of ${knob.types.join(', ')}`;
}

export function knobValue(knob: Knob, values: PlantValues): number {
  return knob.of === 'growth' ? values.growth[knob.parameter] : values.types[knob.types[0]][knob.parameter];
}

/** Where the knobs of `values` stand between their bounds, 0…1. */
export function positionOf(knobs: readonly Knob[], values: PlantValues): number[] {
  return knobs.map((knob) =>
    Math.min(1, Math.max(0, (knobValue(knob, values) - knob.low) / (knob.high - knob.low))),
  );
}

/** A copy of `values` with the knobs at `position` (0…1), rounded to the three decimals that get written. */
export function moved(values: PlantValues, knobs: readonly Knob[], position: readonly number[]): PlantValues {
  const at = new Map(knobs.map((knob, i) => [knob, position[i]]));
  return withKnobs(
    values,
    knobs,
    (knob) => Math.round(1000 * (knob.low + (at.get(knob) ?? 0) * (knob.high - knob.low))) / 1000,
  );
}

/** A copy of `values` with the knobs set to `numberOf`. */
export function withKnobs(
  values: PlantValues,
  knobs: readonly Knob[],
  numberOf: (knob: Knob) => number,
): PlantValues {
  const growth: Record<string, number> = { ...values.growth };
  const types = Object.fromEntries(
    onionTypes.map((type): [string, Record<string, number>] => [type, { ...values.types[type] }]),
  );
  for (const knob of knobs) {
    const value = numberOf(knob);
    if (knob.of === 'growth') growth[knob.parameter] = value;
    else for (const type of knob.types) types[type][knob.parameter] = value;
  }
  return { growth, types } as PlantValues;
}
