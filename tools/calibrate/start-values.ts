import { defaultPlantValues, onionTypes, type PlantValues } from '../../packages/engine/src/index.ts';

/**
 * Where every fit begins, whatever values are in use: middles of the published bounds and values from memory. What is
 * not fitted is as in packages/engine/src/plant/parameters.ts.
 */
const growth = {
  phyllochron: 85,
  bulbingRate: 0.3,
  setRipeningFactor: 0.95,
  radiationUseGMJ: 1.3,
  setSizePower: 0.8,
} satisfies Partial<PlantValues['growth']>;

const types = {
  'tropical-short': { criticalPhotoperiodH: 11.5, ripeningTT: 700, ripeningPhotoperiodSlope: 0.15 },
  short: { criticalPhotoperiodH: 11.8, ripeningTT: 780, ripeningPhotoperiodSlope: 0.15 },
  intermediate: {
    criticalPhotoperiodH: 14.2,
    photoperiodPerH: 1,
    ripeningTT: 620,
    ripeningPhotoperiodSlope: 0.15,
  },
  'early-long': {
    criticalPhotoperiodH: 14.4,
    photoperiodPerH: 0.3,
    ripeningTT: 860,
    ripeningPhotoperiodSlope: 0.15,
  },
  'northern-long': { criticalPhotoperiodH: 15.1, photoperiodPerH: 0.3, ripeningTT: 860 },
} as const;

const bolting = { vernalHalfD: 35, vernalSpreadD: 5, boltingSizeG: 0.5 } as const;

export const startValues: PlantValues = {
  growth: { ...defaultPlantValues.growth, ...growth },
  types: Object.fromEntries(
    onionTypes.map((type) => [
      type,
      {
        ...defaultPlantValues.types[type],
        ...types[type],
        ...bolting,
      },
    ]),
  ) as PlantValues['types'],
};
