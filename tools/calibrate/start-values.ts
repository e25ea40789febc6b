import { defaultPlantValues, onionTypes, type PlantValues } from '../../packages/engine/src/index.ts';

/**
 * Where every fit begins, whatever values are in use: middles of the published bounds and values from memory. What is
 * not fitted is as in packages/engine/src/plant/parameters.ts.
 */
const growth = {
  emergenceTT: 95,
  phyllochron: 95,
  competenceTT: 550,
  photoperiodRampH: 1.2,
  bulbingRate: 0.15,
  bulbingBaseC: 6.4,
  bulbingFullC: 20,
  bulbingLossPerDay: 0.035,
  ripeningPhotoperiodSlope: 0.05,
  setSproutTT: 80,
  setRipeningFactor: 0.95,
  transplantShockD: 15,
  transplantG: 0.3,
  leafAreaMaxCm2: 110,
  leafSizeScale: 6.5,
  shootPerLeafArea: 0.012,
  radiationUseGMJ: 1.2,
  extinction: 0.4,
  setLeafSizeScale: 4,
  setSizePower: 0.7,
  setG: 0.8,
  setLeaves: 2,
  setLeafCeiling: 9,
  boltingSizeSpan: 3,
  setSpringColdD: 6,
} satisfies Partial<PlantValues['growth']>;

const types = {
  'tropical-short': { criticalPhotoperiodH: 11.5, ripeningTT: 600, ripeningBaseC: 8, ripeningCapC: 29 },
  short: { criticalPhotoperiodH: 11.8, ripeningTT: 760, ripeningBaseC: 3.7, ripeningCapC: 17 },
  intermediate: { criticalPhotoperiodH: 13.1, ripeningTT: 660, ripeningBaseC: 3.7, ripeningCapC: 17 },
  'early-long': { criticalPhotoperiodH: 14, ripeningTT: 830, ripeningBaseC: 3.7, ripeningCapC: 17 },
  'northern-long': { criticalPhotoperiodH: 15.3, ripeningTT: 830, ripeningBaseC: 3.7, ripeningCapC: 17 },
} as const;

const bolting = { vernalHalfD: 35, vernalSpreadD: 6, boltingSizeG: 0.3 } as const;

export const startValues: PlantValues = {
  growth: { ...defaultPlantValues.growth, ...growth },
  types: Object.fromEntries(
    onionTypes.map((type) => [
      type,
      {
        ...defaultPlantValues.types[type],
        ...types[type],
        ...bolting,
        vernalCeilingC: type === 'tropical-short' ? 22 : 17,
      },
    ]),
  ) as PlantValues['types'],
};
