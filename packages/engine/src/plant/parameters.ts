import { type OnionType, onionTypes } from './kinds.ts';

/**
 * A model constant with its unit, the bounds a fit may move it in, and where its value comes from.
 * Origins: "seen" was read in the named source, "memory" comes from general knowledge and was not checked,
 * "fit" was fitted here on published calendars and trials inside the bounds.
 */
export type Parameter = { value: number; unit: string; low: number; high: number; origin: string };

function p(value: number, unit: string, low: number, high: number, origin: string): Parameter {
  return { value, unit, low, high, origin };
}

/** Shared by all types: cultivars from different latitudes grow alike (Brewster & Barnes 1981, seen). */
export const growthParameters = {
  emergenceBaseC: p(2.4, '°C', 0, 3.5, 'derived: Harrington & Minges 1954, 1/days on temperature, 5–25 °C'),
  emergenceCapC: p(25, '°C', 20, 30, 'seen: Harrington & Minges 1954, no gain above'),
  emergenceTT: p(
    98.016,
    '°C d',
    80,
    130,
    'fit; bounds derived: Harrington & Minges 1954; field check Oshima 1950–52',
  ),
  leafBaseC: p(5, '°C', 5, 7, 'seen: Usuki et al., Hort. Res. (Japan), direct-sown onion'),
  leafCapC: p(20, '°C', 20, 27, 'seen: Brewster 2008 p. 129, cap of the growth equations'),
  phyllochron: p(80, '°C d per leaf', 80, 120, 'fit; bounds memory'),
  firstLeavesFactor: p(1.4, '–', 1, 1.6, 'memory: the first three leaves come slower'),
  leafLifeTT: p(960, '°C d above 3 °C', 700, 1200, 'derived: Wageningen seed-onion parameter set'),
  leafAreaMaxCm2: p(86.483, 'cm² a leaf', 70, 160, 'fit; start and bounds memory'),
  leafSizeScale: p(
    4.247,
    'leaves',
    4,
    8,
    'fit; start memory: early leaves are small, so a plant that bulbs on few leaves stays small',
  ),
  shootPerLeafArea: p(
    0.007,
    'g cm⁻²',
    0.007,
    0.02,
    'fit; start memory: about 80 cm² of green leaf a gram of shoot; what leaves cannot hold is not made',
  ),
  growthBaseC: p(6, '°C', 5, 6.4, 'seen: Brewster 2008 p. 129, Eqns 4.17'),
  growthRate: p(0.0111, '(°C d)⁻¹', 0.0105, 0.0115, 'seen: Brewster 2008 p. 129, Eqns 4.17'),
  radiationUseGMJ: p(
    1.084,
    'g MJ⁻¹ total solar',
    0.9,
    1.4,
    'fit; bounds seen on mixed bases: Brewster, Mondal & Morris 1986',
  ),
  extinction: p(0.467, '–', 0.32, 0.5, 'fit; bounds derived: Brewster 2008 p. 103, Wellesbourne'),
  competenceTT: p(
    602.984,
    '°C d above 5 °C',
    345,
    650,
    'fit; bounds derived: Tesfay 2011; Lancaster et al. 1996',
  ),
  photoperiodRampH: p(
    1.201,
    'h',
    0.5,
    3.5,
    'fit; seen: rising from 12 to 15 h in the Danish set, Mollerup 2005',
  ),
  bulbingRate: p(0.279, 'd⁻¹', 0.05, 0.3, 'fit; a bulb within two weeks at 12 h, Wickramasinghe 2000'),
  bulbingBaseC: p(5.268, '°C', 4, 10, 'fit'),
  bulbingFullC: p(21.585, '°C', 16, 25, 'fit'),
  bulbingLossPerDay: p(0.05, 'd⁻¹', 0, 0.05, 'fit; bounds memory, direction Kato 1964'),
  ripeningPhotoperiodSlope: p(0.001, 'h⁻¹', 0, 0.3, 'fit'),
  ripeningDensitySlope: p(
    0.085,
    'per ln density',
    0.05,
    0.12,
    'derived: Rumpel & Felczyński; Ituporanga; Beyeda',
  ),
  transplantLeaves: p(4.5, 'leaves', 3, 5, 'common practice, no source: bought plants come with 4–5 leaves'),
  transplantG: p(0.1, 'g dry matter', 0.1, 0.8, 'fit; bounds memory, Boyhan 2009 for fresh mass'),
  transplantShockD: p(20, 'd', 8, 20, 'fit; bounds memory'),
  frostHeaveLoss: p(0.08, 'share a night', 0, 0.1, 'set by hand: Oregon 1977, sown 20 September and lost'),
  setSproutTT: p(42.668, '°C d above 5 °C', 40, 120, 'fit; bounds memory'),
  setLeaves: p(2.045, 'leaves', 1, 3, 'fit; bounds memory'),
  setG: p(0.476, 'g dry matter, 16 mm set', 0.3, 1.2, 'fit: Sapporo 1949–50'),
  setLeafSizeScale: p(6, 'leaves', 2.5, 6, 'fit: Sapporo 1949–50; leaves fed by a set are large sooner'),
  setSizePower: p(
    0.89,
    '–',
    0,
    1.5,
    'fit: Sapporo 1949–50; leaf area of a set plant goes with its diameter so',
  ),
  setLeafCeiling: p(7, 'leaves', 7, 14, 'fit; start memory'),
  setSpringColdD: p(
    2.348,
    'd at 9 °C',
    0,
    20,
    'fit: Sapporo 1949–50; cold that sets still meet in the bed after a usual spring planting',
  ),
  setRipeningFactor: p(0.814, '–', 0.8, 1.1, 'fit'),
  boltingSizeSpan: p(
    1.801,
    '–',
    1,
    4,
    'fit; start memory: cold counts in full once a plant has grown e^span past the bolting size',
  ),
} as const satisfies Record<string, Parameter>;

type PerType = Record<OnionType, Parameter>;

const photoperiodOrigin = 'growth rooms seen (Wickramasinghe 2000, Tesfay 2011, Austin 1972); field fit';
const competenceOrigin =
  'memory; direction seen: 4, 5 and 6 leaves for early, middle and late types, JJSHS 22:95 (1953); set by hand';
const ripeningOrigin = 'fit';
const memoryOrigin = 'memory';
const vernalOrigin =
  'fit; 20–50 d at 9 °C for big plants seen (Shishido & Saito 1984), 90–185 d for stored bulbs (review)';
const vernalSpreadOrigin = 'fit; so much below the half-point that plants without any cold stand';
const boltSizeOrigin =
  'fit; seen: Brewster 2008 p. 152, sensitive 0.06 g, resistant 0.45 g; twice that allowed';

/** What makes a type. */
export const typeParameters = {
  /** Photoperiod (civil twilight) above which bulbing is induced. */
  criticalPhotoperiodH: {
    'tropical-short': p(11.3, 'h', 11.3, 11.8, photoperiodOrigin),
    short: p(11.741, 'h', 11.5, 12.3, photoperiodOrigin),
    intermediate: p(13.5, 'h', 12.6, 13.5, photoperiodOrigin),
    'early-long': p(14.379, 'h', 13.6, 14.4, photoperiodOrigin),
    'northern-long': p(15.011, 'h', 15, 16.5, photoperiodOrigin),
  },
  minimumLeaves: {
    'tropical-short': p(4, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), early'),
    short: p(4, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), early'),
    intermediate: p(5, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), middle'),
    'early-long': p(6, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), late'),
    'northern-long': p(6, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), late'),
  },
  /** Thermal age from which the type can bulb, against `competenceTT`. */
  competenceShare: {
    'tropical-short': p(1, '–', 0.6, 1, competenceOrigin),
    short: p(0.7, '–', 0.6, 1, competenceOrigin),
    intermediate: p(1, '–', 0.6, 1, competenceOrigin),
    'early-long': p(1, '–', 0.6, 1, competenceOrigin),
    'northern-long': p(1, '–', 0.6, 1, competenceOrigin),
  },
  ripeningTT: {
    'tropical-short': p(630.442, '°C d', 400, 800, ripeningOrigin),
    short: p(939.591, '°C d', 570, 950, ripeningOrigin),
    intermediate: p(653.339, '°C d', 495, 825, ripeningOrigin),
    'early-long': p(901.587, '°C d', 620, 1040, ripeningOrigin),
    'northern-long': p(907.341, '°C d', 620, 1040, ripeningOrigin),
  },
  ripeningBaseC: {
    'tropical-short': p(10.527, '°C', 4, 11, 'fit; ripe within six weeks at 29–34 °C, Wickramasinghe 2000'),
    short: p(0.84, '°C', 0, 6, ripeningOrigin),
    intermediate: p(0.84, '°C', 0, 6, ripeningOrigin),
    'early-long': p(0.84, '°C', 0, 6, ripeningOrigin),
    'northern-long': p(0.84, '°C', 0, 6, ripeningOrigin),
  },
  ripeningCapC: {
    'tropical-short': p(
      31.043,
      '°C',
      25,
      32,
      'fit; bounds memory, direction seen: fastest at the hottest, Steer 1980a, Wickramasinghe 2000',
    ),
    short: p(18.083, '°C', 15, 21, ripeningOrigin),
    intermediate: p(18.083, '°C', 15, 21, ripeningOrigin),
    'early-long': p(18.083, '°C', 15, 21, ripeningOrigin),
    'northern-long': p(18.083, '°C', 15, 21, ripeningOrigin),
  },
  vernalHalfD: {
    'tropical-short': p(15, 'd at 9 °C', 15, 130, vernalOrigin),
    short: p(42.936, 'd at 9 °C', 15, 130, vernalOrigin),
    intermediate: p(39.154, 'd at 9 °C', 15, 130, vernalOrigin),
    'early-long': p(16.231, 'd at 9 °C', 15, 130, vernalOrigin),
    'northern-long': p(33.516, 'd at 9 °C', 15, 130, vernalOrigin),
  },
  vernalSpreadD: {
    'tropical-short': p(3, 'd', 3, 10, vernalSpreadOrigin),
    short: p(8.343, 'd', 3, 10, vernalSpreadOrigin),
    intermediate: p(10, 'd', 3, 10, vernalSpreadOrigin),
    'early-long': p(3, 'd', 3, 10, vernalSpreadOrigin),
    'northern-long': p(7.92, 'd', 3, 10, vernalSpreadOrigin),
  },
  /** Shoot dry matter from which a plant can be turned to flower. */
  boltingSizeG: {
    'tropical-short': p(0.899, 'g', 0.06, 0.9, boltSizeOrigin),
    short: p(0.9, 'g', 0.06, 0.9, boltSizeOrigin),
    intermediate: p(0.734, 'g', 0.06, 0.9, boltSizeOrigin),
    'early-long': p(0.726, 'g', 0.06, 0.9, boltSizeOrigin),
    'northern-long': p(0.06, 'g', 0.06, 0.9, boltSizeOrigin),
  },
  /** Temperature above which cold no longer counts towards flowering. */
  vernalCeilingC: {
    'tropical-short': p(
      22.178,
      '°C',
      17,
      26,
      'fit: Faridpur bolting by planting date; tropical kinds are turned by milder cold (memory)',
    ),
    short: p(18.976, '°C', 15, 20, 'fit; bounds seen: Holdsworth & Heath IV'),
    intermediate: p(15.628, '°C', 15, 20, 'fit; bounds seen: Holdsworth & Heath IV'),
    'early-long': p(15, '°C', 15, 20, 'fit; bounds seen: Holdsworth & Heath IV'),
    'northern-long': p(15, '°C', 15, 20, 'fit; bounds seen: Holdsworth & Heath IV'),
  },
  dryMatterShare: {
    'tropical-short': p(0.12, '–', 0.06, 0.17, memoryOrigin),
    short: p(0.08, '–', 0.06, 0.17, memoryOrigin),
    intermediate: p(0.1, '–', 0.06, 0.17, memoryOrigin),
    'early-long': p(0.1, '–', 0.06, 0.17, memoryOrigin),
    'northern-long': p(0.12, '–', 0.06, 0.17, memoryOrigin),
  },
} as const satisfies Record<string, PerType>;

type Values<T> = { [K in keyof T]: number };
export type GrowthValues = Values<typeof growthParameters>;
export type TypeValues = Values<typeof typeParameters>;
/** The numbers a run reads. */
export type PlantValues = { growth: GrowthValues; types: Record<OnionType, TypeValues> };

function valuesOf<T extends Record<string, Parameter>>(table: T): Values<T> {
  return Object.fromEntries(Object.entries(table).map(([name, entry]) => [name, entry.value])) as Values<T>;
}

function typeValues(type: OnionType): TypeValues {
  return Object.fromEntries(
    Object.entries(typeParameters).map(([name, byType]) => [name, (byType as PerType)[type].value]),
  ) as TypeValues;
}

export const defaultPlantValues: PlantValues = {
  growth: valuesOf(growthParameters),
  types: Object.fromEntries(onionTypes.map((type) => [type, typeValues(type)])) as Record<
    OnionType,
    TypeValues
  >,
};
