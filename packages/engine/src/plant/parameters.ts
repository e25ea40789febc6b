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
  emergenceTT: p(95, '°C d', 80, 130, 'derived: Harrington & Minges 1954; field check Oshima 1950–52'),
  leafBaseC: p(5, '°C', 5, 7, 'seen: Usuki et al., Hort. Res. (Japan), direct-sown onion'),
  leafCapC: p(20, '°C', 20, 27, 'seen: Brewster 2008 p. 129, cap of the growth equations'),
  phyllochron: p(93.73, '°C d per leaf', 60, 120, 'fit; bounds memory'),
  firstLeavesFactor: p(1.4, '–', 1, 1.6, 'memory: the first three leaves come slower'),
  leafLifeTT: p(960, '°C d above 3 °C', 700, 1200, 'derived: Wageningen seed-onion parameter set'),
  leafAreaMaxCm2: p(
    160,
    'cm² a leaf',
    90,
    180,
    'set by hand: large leaves of a well-fed plant 120–160 cm² (memory); young plants stay below by their mass',
  ),
  leafSizeScale: p(
    4,
    'leaves',
    3,
    8,
    'memory: early leaves are small, so a plant that bulbs on few leaves stays small; the data hardly know it',
  ),
  shootPerLeafArea: p(
    0.006,
    'g cm⁻²',
    0.005,
    0.02,
    'derived: Brewster 2008 Eqns 4.17 at 1–3 g, about 170 cm² a gram; what leaves cannot hold is not made',
  ),
  growthBaseC: p(6, '°C', 5, 6.4, 'seen: Brewster 2008 p. 129, Eqns 4.17'),
  growthRate: p(0.0111, '(°C d)⁻¹', 0.0105, 0.0115, 'seen: Brewster 2008 p. 129, Eqns 4.17'),
  radiationUseGMJ: p(
    1.374,
    'g MJ⁻¹ total solar',
    0.9,
    1.7,
    'fit; bounds seen on mixed bases: Brewster, Mondal & Morris 1986; on a day of 15 MJ m⁻²',
  ),
  lightHalfMJ: p(
    12,
    'MJ m⁻² d⁻¹',
    8,
    40,
    'set by hand: bright days use light less, half as well at this much (shape memory; trials of growers’ sizes, decision 23)',
  ),
  extinction: p(0.5, '–', 0.32, 0.6, 'memory; bounds derived: Brewster 2008 p. 103, Wellesbourne'),
  competenceTT: p(
    480,
    '°C d above 5 °C',
    345,
    650,
    'derived: Tesfay 2011 (343–597 above 6.4 °C); Lancaster et al. 1996 (600); the data hardly know it',
  ),
  nurseryCrowdLeaves: p(
    3,
    'leaves',
    2.8,
    12,
    'derived: 30, 45 and 60 days in a nursery give 1, 2 and 2.5 leaves (Hokkaido 1973–75); leaves that crowded seedlings never pass',
  ),
  photoperiodRampH: p(
    0.6,
    'h',
    0.3,
    3.5,
    'set by hand: any sharper fits as well; softer in the Danish set (12 to 15 h, Mollerup 2005)',
  ),
  bulbingRate: p(
    0.25,
    'd⁻¹',
    0.25,
    0.8,
    'fit; a bulb within two weeks at 12 h, Wickramasinghe 2000; under 0.25 dates stand on an edge: a tenth less costs half of all that a fit gains',
  ),
  bulbingBaseC: p(5, '°C', 4, 10, 'seen: none at 5 °C in the Danish set, Mollerup 2005'),
  bulbingFullC: p(20, '°C', 16, 25, 'derived: no faster above 20–22 °C, Tesfay et al. 2011'),
  bulbingLossPerDay: p(0.04, 'd⁻¹', 0, 0.06, 'memory, direction Kato 1964'),
  ripeningDensitySlope: p(
    0.085,
    'per ln density',
    0.05,
    0.12,
    'derived: Rumpel & Felczyński; Ituporanga; Beyeda',
  ),
  transplantLeaves: p(4.5, 'leaves', 3, 5, 'common practice, no source: bought plants come with 4–5 leaves'),
  transplantG: p(
    0.5,
    'g dry matter',
    0.3,
    0.8,
    'derived: 6.5–7.5 g fresh (Boyhan 2009) at 8–9 % dry matter, a little less for smaller plants',
  ),
  rootingTT: p(
    230,
    '°C d above 5 °C',
    60,
    240,
    'memory: three to four weeks in a bed of 12–15 °C until moved plants grow again; raised crops are lifted later than they ripen here, so the fit would have it longer still',
  ),
  frostHeaveLoss: p(0.1, 'share a night', 0, 0.15, 'set by hand: Oregon 1977, sown 20 September and lost'),
  setSproutTT: p(60, '°C d above 5 °C', 30, 120, 'memory: leaves show in two to three weeks'),
  setLeaves: p(2, 'leaves', 1, 3, 'memory'),
  setG: p(0.8, 'g dry matter, 16 mm set', 0.3, 1.2, 'memory'),
  setLeafSizeScale: p(3, 'leaves', 2.5, 6, 'memory: leaves fed by a set are large sooner'),
  setSizePower: p(
    1.143,
    '–',
    0,
    1.5,
    'fit: Sapporo 1949–50; leaf area of a set plant goes with its diameter so',
  ),
  setRipeningFactor: p(0.894, '–', 0.8, 1.1, 'fit'),
  boltingSizeSpan: p(
    1,
    '–',
    0.5,
    4,
    'seen: a narrow transition in weight, Brewster 2008 p. 152; cold counts in full once a plant has grown e^span past the bolting size',
  ),
} as const satisfies Record<string, Parameter>;

type PerType = Record<OnionType, Parameter>;

const photoperiodOrigin = 'growth rooms seen (Wickramasinghe 2000, Tesfay 2011, Austin 1972); field fit';
const localOrigin =
  'fit; seen: earliness within a region follows the need (Abe et al. 1955; Ikeda et al. 2020)';
const competenceOrigin =
  'memory; direction seen: 4, 5 and 6 leaves for early, middle and late types, JJSHS 22:95 (1953); set by hand';
const ripeningOrigin = 'fit';
const hasteOrigin =
  'fit: in far longer days than at home they ripen small (direction common practice, no source); stands at its bound, as the data hardly know it beyond 0.4';
const homeDaysOrigin =
  'set by hand: bred for the longest days; sets of April at 60° N are lifted in August, not in July (common practice, no source)';
const ripeningRangeOrigin = 'seen: base 0 °C, none gained above 21, the Wageningen seed-onion set';
const memoryOrigin = 'memory: sweet 6–9 %, ordinary 9–11 %, keepers 10–14 %';
const vernalOrigin =
  'fit; 20–50 d at 9 °C for big plants seen (Shishido & Saito 1984), 90–185 d for stored bulbs (review)';
const vernalSpreadOrigin = 'fit; so much below the half-point that plants without any cold stand';
const ceilingOrigin = 'seen: none is turned above about 17 °C, Holdsworth & Heath IV';
const boltSizeOrigin =
  'fit; seen: Brewster 2008 p. 152, Rijnsburger 0.06 g, a kind that winters 0.45 g; up to four times that allowed';

/** What makes a type. */
export const typeParameters = {
  /** Photoperiod (civil twilight) above which bulbing is induced. */
  criticalPhotoperiodH: {
    'tropical-short': p(11.435, 'h', 11.3, 11.8, photoperiodOrigin),
    short: p(11.701, 'h', 11.5, 12.3, photoperiodOrigin),
    intermediate: p(14.327, 'h', 12.6, 14.7, photoperiodOrigin),
    'early-long': p(14.319, 'h', 13.6, 15.2, photoperiodOrigin),
    'northern-long': p(15.069, 'h', 14.5, 16.5, photoperiodOrigin),
  },
  /** How much more day a kind asks for where the longest day is an hour longer: kinds sold in a place are bred there. */
  photoperiodPerH: {
    'tropical-short': p(0, 'h h⁻¹', 0, 0.1, 'memory: days in the tropics hardly differ'),
    short: p(0, 'h h⁻¹', 0, 0.9, 'set by hand: the fit came to none'),
    intermediate: p(1.367, 'h h⁻¹', 0.1, 1.5, localOrigin),
    'early-long': p(0.319, 'h h⁻¹', 0, 0.9, localOrigin),
    'northern-long': p(0.319, 'h h⁻¹', 0, 0.9, localOrigin),
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
    'tropical-short': p(0.7, '–', 0.6, 1, competenceOrigin),
    short: p(0.7, '–', 0.6, 1, competenceOrigin),
    intermediate: p(1, '–', 0.6, 1, competenceOrigin),
    'early-long': p(1, '–', 0.6, 1, competenceOrigin),
    'northern-long': p(1, '–', 0.6, 1, competenceOrigin),
  },
  ripeningTT: {
    'tropical-short': p(
      880,
      '°C d',
      400,
      880,
      'fit; bound derived: ripe within six weeks at 12 h and 29–34 °C, Wickramasinghe 2000',
    ),
    short: p(1063.534, '°C d', 570, 1150, ripeningOrigin),
    intermediate: p(466.55, '°C d', 440, 825, ripeningOrigin),
    'early-long': p(1012.001, '°C d', 620, 1150, ripeningOrigin),
    'northern-long': p(817.743, '°C d', 620, 1040, ripeningOrigin),
  },
  /** How much sooner tops go over for each hour of day beyond two above the need. */
  ripeningPhotoperiodSlope: {
    'tropical-short': p(0.6, 'h⁻¹', 0, 0.6, hasteOrigin),
    short: p(0.6, 'h⁻¹', 0, 0.6, hasteOrigin),
    intermediate: p(0.6, 'h⁻¹', 0, 0.6, hasteOrigin),
    'early-long': p(0.6, 'h⁻¹', 0, 0.6, hasteOrigin),
    'northern-long': p(0, 'h⁻¹', 0, 0.6, homeDaysOrigin),
  },
  ripeningBaseC: {
    'tropical-short': p(4, '°C', 0, 11, 'set by hand, within the growth rooms of Wickramasinghe 2000'),
    short: p(0, '°C', 0, 6, ripeningRangeOrigin),
    intermediate: p(0, '°C', 0, 6, ripeningRangeOrigin),
    'early-long': p(0, '°C', 0, 6, ripeningRangeOrigin),
    'northern-long': p(0, '°C', 0, 6, ripeningRangeOrigin),
  },
  ripeningCapC: {
    'tropical-short': p(
      29,
      '°C',
      25,
      32,
      'memory, direction seen: fastest at the hottest, Steer 1980a, Wickramasinghe 2000',
    ),
    short: p(21, '°C', 15, 21, ripeningRangeOrigin),
    intermediate: p(21, '°C', 15, 21, ripeningRangeOrigin),
    'early-long': p(21, '°C', 15, 21, ripeningRangeOrigin),
    'northern-long': p(21, '°C', 15, 21, ripeningRangeOrigin),
  },
  vernalHalfD: {
    'tropical-short': p(17.846, 'd at 9 °C', 10, 130, vernalOrigin),
    short: p(17.846, 'd at 9 °C', 10, 130, vernalOrigin),
    intermediate: p(19.041, 'd at 9 °C', 10, 130, vernalOrigin),
    'early-long': p(19.041, 'd at 9 °C', 10, 130, vernalOrigin),
    'northern-long': p(19.041, 'd at 9 °C', 10, 130, vernalOrigin),
  },
  vernalSpreadD: {
    'tropical-short': p(4.632, 'd', 2, 10, vernalSpreadOrigin),
    short: p(4.632, 'd', 2, 10, vernalSpreadOrigin),
    intermediate: p(4.632, 'd', 2, 10, vernalSpreadOrigin),
    'early-long': p(4.632, 'd', 2, 10, vernalSpreadOrigin),
    'northern-long': p(4.632, 'd', 2, 10, vernalSpreadOrigin),
  },
  /** Shoot dry matter from which a plant can be turned to flower. */
  boltingSizeG: {
    'tropical-short': p(1.223, 'g', 0.06, 1.8, boltSizeOrigin),
    short: p(1.223, 'g', 0.06, 1.8, boltSizeOrigin),
    intermediate: p(1.336, 'g', 0.06, 1.8, boltSizeOrigin),
    'early-long': p(1.336, 'g', 0.06, 1.8, boltSizeOrigin),
    'northern-long': p(1.336, 'g', 0.06, 1.8, boltSizeOrigin),
  },
  /** Temperature above which cold no longer counts towards flowering. */
  vernalCeilingC: {
    'tropical-short': p(
      22,
      '°C',
      17,
      26,
      'set by hand: they flower where no day is colder than this (Faridpur); turned by milder cold (memory)',
    ),
    short: p(17, '°C', 15, 20, ceilingOrigin),
    intermediate: p(17, '°C', 15, 20, ceilingOrigin),
    'early-long': p(17, '°C', 15, 20, ceilingOrigin),
    'northern-long': p(17, '°C', 15, 20, ceilingOrigin),
  },
  dryMatterShare: {
    'tropical-short': p(0.12, '–', 0.1, 0.15, memoryOrigin),
    short: p(0.1, '–', 0.08, 0.11, memoryOrigin),
    intermediate: p(0.1, '–', 0.09, 0.11, memoryOrigin),
    'early-long': p(0.1, '–', 0.08, 0.11, memoryOrigin),
    'northern-long': p(0.115, '–', 0.1, 0.14, memoryOrigin),
  },
} as const satisfies Record<string, PerType>;

type Values<T> = { [K in keyof T]: number };
/** What all types share; units at {@link growthParameters}. */
export type GrowthValues = Values<typeof growthParameters>;
/** What makes a type; units at {@link typeParameters}. */
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

/** The fitted numbers, each as {@link growthParameters} and {@link typeParameters} have it. */
export const defaultPlantValues: PlantValues = {
  growth: valuesOf(growthParameters),
  types: Object.fromEntries(onionTypes.map((type) => [type, typeValues(type)])) as PlantValues['types'],
};
