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
    85.088,
    '°C d',
    80,
    130,
    'fit; bounds derived: Harrington & Minges 1954; field check Oshima 1950–52',
  ),
  leafBaseC: p(5, '°C', 5, 7, 'seen: Usuki et al., Hort. Res. (Japan), direct-sown onion'),
  leafCapC: p(20, '°C', 20, 27, 'seen: Brewster 2008 p. 129, cap of the growth equations'),
  phyllochron: p(98.75, '°C d per leaf', 80, 120, 'fit; bounds memory'),
  firstLeavesFactor: p(1.4, '–', 1, 1.6, 'memory: the first three leaves come slower'),
  leafLifeTT: p(960, '°C d above 3 °C', 700, 1200, 'derived: Wageningen seed-onion parameter set'),
  leafAreaMaxCm2: p(90, 'cm² a leaf', 55, 90, 'memory'),
  growthBaseC: p(6, '°C', 5, 6.4, 'seen: Brewster 2008 p. 129, Eqns 4.17'),
  growthRate: p(0.0111, '(°C d)⁻¹', 0.0105, 0.0115, 'seen: Brewster 2008 p. 129, Eqns 4.17'),
  radiationUseGMJ: p(
    1.3,
    'g MJ⁻¹ total solar',
    0.9,
    1.4,
    'fit; bounds seen on mixed bases: Brewster, Mondal & Morris 1986',
  ),
  extinction: p(0.4, '–', 0.32, 0.5, 'derived: Brewster 2008 p. 103, Wellesbourne'),
  competenceTT: p(
    650,
    '°C d above 5 °C',
    345,
    650,
    'fit; bounds derived: Tesfay 2011; Lancaster et al. 1996',
  ),
  photoperiodRampH: p(0.701, 'h', 0.5, 2, 'fit'),
  bulbingRate: p(0.109, 'd⁻¹', 0.05, 0.11, 'fit'),
  bulbingBaseC: p(7.283, '°C', 4, 10, 'fit'),
  bulbingFullC: p(18.326, '°C', 16, 25, 'fit'),
  bulbingLossPerDay: p(0.035, 'd⁻¹', 0, 0.05, 'memory: Kato 1964 for the direction'),
  ripeningPhotoperiodSlope: p(0.1, 'h⁻¹', 0, 0.3, 'fit'),
  ripeningDensitySlope: p(
    0.085,
    'per ln density',
    0.05,
    0.12,
    'derived: Rumpel & Felczyński; Ituporanga; Beyeda',
  ),
  transplantLeaves: p(4.5, 'leaves', 3, 5, 'common practice, no source: bought plants come with 4–5 leaves'),
  transplantG: p(0.3, 'g dry matter', 0.1, 0.8, 'memory; Boyhan 2009 for fresh mass'),
  transplantShockD: p(19.035, 'd', 8, 20, 'fit; bounds memory'),
  setSproutTT: p(40, '°C d above 5 °C', 40, 120, 'fit; bounds memory'),
  setLeaves: p(2, 'leaves', 1, 3, 'memory'),
  setG: p(0.8, 'g dry matter, 16 mm set', 0.3, 1.2, 'fit: Sapporo 1949–50'),
  setLeafCeiling: p(8, 'leaves', 7, 10, 'memory'),
  setRipeningFactor: p(0.939, '–', 0.8, 1.1, 'fit'),
} as const satisfies Record<string, Parameter>;

type PerType = Record<OnionType, Parameter>;

const photoperiodOrigin = 'growth rooms seen (Wickramasinghe 2000, Tesfay 2011, Austin 1972); field fit';
const ripeningOrigin = 'fit';
const memoryOrigin = 'memory';
const boltSizeOrigin = 'fit; bounds seen: Brewster 2008 p. 152, sensitive 0.06 g, resistant 0.45 g';

/** What makes a type. */
export const typeParameters = {
  /** Photoperiod (civil twilight) above which bulbing is induced. */
  criticalPhotoperiodH: {
    'tropical-short': p(11.304, 'h', 11.3, 11.8, photoperiodOrigin),
    short: p(11.5, 'h', 11.5, 12.3, photoperiodOrigin),
    intermediate: p(13.5, 'h', 12.6, 13.5, photoperiodOrigin),
    'early-long': p(14.301, 'h', 13.6, 14.4, photoperiodOrigin),
    'northern-long': p(15.218, 'h', 14.4, 16, photoperiodOrigin),
  },
  minimumLeaves: {
    'tropical-short': p(4, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), early'),
    short: p(4, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), early'),
    intermediate: p(5, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), middle'),
    'early-long': p(6, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), late'),
    'northern-long': p(6, 'leaves', 4, 7, 'seen: JJSHS 22:95 (1953), late'),
  },
  ripeningTT: {
    'tropical-short': p(530, '°C d', 400, 800, ripeningOrigin),
    short: p(760.198, '°C d', 570, 950, ripeningOrigin),
    intermediate: p(497.398, '°C d', 495, 825, ripeningOrigin),
    'early-long': p(706.954, '°C d', 620, 1040, ripeningOrigin),
    'northern-long': p(620, '°C d', 620, 1040, ripeningOrigin),
  },
  ripeningBaseC: {
    'tropical-short': p(8.028, '°C', 4, 11, 'fit; ripe within six weeks at 29–34 °C, Wickramasinghe 2000'),
    short: p(0, '°C', 0, 6, ripeningOrigin),
    intermediate: p(0, '°C', 0, 6, ripeningOrigin),
    'early-long': p(0, '°C', 0, 6, ripeningOrigin),
    'northern-long': p(0, '°C', 0, 6, ripeningOrigin),
  },
  ripeningCapC: {
    'tropical-short': p(
      30,
      '°C',
      25,
      32,
      'memory; direction seen: fastest at the hottest, Steer 1980a, Wickramasinghe 2000',
    ),
    short: p(16.373, '°C', 15, 21, ripeningOrigin),
    intermediate: p(16.373, '°C', 15, 21, ripeningOrigin),
    'early-long': p(16.373, '°C', 15, 21, ripeningOrigin),
    'northern-long': p(16.373, '°C', 15, 21, ripeningOrigin),
  },
  vernalHalfD: {
    'tropical-short': p(45, 'd at 9 °C', 40, 130, 'fit'),
    short: p(54.47, 'd at 9 °C', 40, 130, 'fit'),
    intermediate: p(45, 'd at 9 °C', 40, 130, 'fit'),
    'early-long': p(45, 'd at 9 °C', 40, 130, 'fit'),
    'northern-long': p(106.82, 'd at 9 °C', 40, 130, 'fit'),
  },
  vernalSpreadD: {
    'tropical-short': p(9, 'd', 3, 15, 'fit'),
    short: p(9, 'd', 3, 15, 'fit'),
    intermediate: p(9, 'd', 3, 15, 'fit'),
    'early-long': p(9, 'd', 3, 15, 'fit'),
    'northern-long': p(9, 'd', 3, 15, 'fit'),
  },
  /** Shoot dry matter from which a plant can be turned to flower. */
  boltingSizeG: {
    'tropical-short': p(0.18, 'g', 0.06, 0.6, boltSizeOrigin),
    short: p(0.6, 'g', 0.06, 0.6, boltSizeOrigin),
    intermediate: p(0.6, 'g', 0.06, 0.6, boltSizeOrigin),
    'early-long': p(0.14, 'g', 0.06, 0.6, boltSizeOrigin),
    'northern-long': p(0.59, 'g', 0.06, 0.6, boltSizeOrigin),
  },
  /** Temperature above which cold no longer counts towards flowering. */
  vernalCeilingC: {
    'tropical-short': p(
      26,
      '°C',
      17,
      26,
      'fit: Faridpur bolting by planting date; tropical kinds are turned by milder cold (memory)',
    ),
    short: p(15.92, '°C', 15, 20, 'fit; bounds seen: Holdsworth & Heath IV'),
    intermediate: p(15.92, '°C', 15, 20, 'fit; bounds seen: Holdsworth & Heath IV'),
    'early-long': p(16.53, '°C', 15, 20, 'fit; bounds seen: Holdsworth & Heath IV'),
    'northern-long': p(16.53, '°C', 15, 20, 'fit; bounds seen: Holdsworth & Heath IV'),
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
