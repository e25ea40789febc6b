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

type Range = readonly [low: number, high: number];

const apart: readonly (readonly OnionType[])[] = onionTypes.map((type) => [type]);
const temperate: readonly OnionType[] = ['short', 'intermediate', 'early-long', 'northern-long'];

// Narrowed by hand after earlier fits ran to the far bound (choice of ours).
const narrower: Partial<Record<keyof GrowthValues, Range>> = {
  phyllochron: [88, 102],
  ripeningPhotoperiodSlope: [0.1, 0.3],
};

/** What moves the dates of bulbing and neck fall. */
export const timingKnobs: readonly Knob[] = [
  ...(
    [
      'emergenceTT',
      'phyllochron',
      'competenceTT',
      'photoperiodRampH',
      'bulbingRate',
      'bulbingBaseC',
      'bulbingFullC',
      'ripeningPhotoperiodSlope',
      'setSproutTT',
      'setRipeningFactor',
      'transplantShockD',
    ] as const
  ).map(growthKnob),
  ...apart.map((types) => typeKnob('criticalPhotoperiodH', types)),
  ...apart.map((types) => typeKnob('ripeningTT', types)),
  typeKnob('ripeningBaseC', ['tropical-short']),
  typeKnob('ripeningBaseC', temperate),
  typeKnob('ripeningCapC', temperate),
];

/** What moves the share of plants that flower. Ranges given here are narrower by choice of ours. */
export const boltingKnobs: readonly Knob[] = [
  ...apart.map((types) => typeKnob('vernalHalfD', types, [45, 130])),
  typeKnob('vernalSpreadD', onionTypes, [4, 9]),
  ...apart.map((types) => typeKnob('boltingSizeG', types)),
  typeKnob('vernalCeilingC', ['tropical-short'], [19, 26]),
  typeKnob('vernalCeilingC', ['short', 'intermediate'], [15, 19]),
  typeKnob('vernalCeilingC', ['early-long', 'northern-long'], [15, 17]),
];

function growthKnob(parameter: keyof GrowthValues): Knob {
  return { of: 'growth', parameter, ...meet([growthParameters[parameter]], narrower[parameter]) };
}

function typeKnob(parameter: keyof TypeValues, types: readonly OnionType[], within?: Range): Knob {
  const bounds = types.map((type) => typeParameters[parameter][type]);
  return { of: 'type', parameter, types, ...meet(bounds, within) };
}

/** What all bounds allow: a knob never leaves those of its parameter. */
function meet(bounds: readonly { low: number; high: number }[], [low, high]: Range = [-Infinity, Infinity]) {
  return {
    low: Math.max(low, ...bounds.map((of) => of.low)),
    high: Math.min(high, ...bounds.map((of) => of.high)),
  };
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
  const growth: Record<string, number> = { ...values.growth };
  const types = Object.fromEntries(
    onionTypes.map((type): [string, Record<string, number>] => [type, { ...values.types[type] }]),
  );
  knobs.forEach((knob, i) => {
    const value = Math.round(1000 * (knob.low + position[i] * (knob.high - knob.low))) / 1000;
    if (knob.of === 'growth') growth[knob.parameter] = value;
    else for (const type of knob.types) types[type][knob.parameter] = value;
  });
  return { growth, types } as PlantValues;
}
