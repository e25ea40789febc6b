/** Texture classes of FAO-56 table 19. */
export type SoilTexture =
  | 'sand'
  | 'loamy-sand'
  | 'sandy-loam'
  | 'loam'
  | 'silt-loam'
  | 'silt'
  | 'silty-clay-loam'
  | 'silty-clay'
  | 'clay';

/** What is known of a soil of one texture. */
export type Soil = {
  /** Water between field capacity and wilting point, m³ m⁻³: lowest and highest of the class. */
  availableWater: readonly [number, number];
  /** Multiplies the share of water that a crop draws without stress. */
  readilyFactor: number;
  /** Water that evaporates from the top 0.1 m without hindrance (REW), and in all (TEW), mm: lowest and highest. */
  readilyEvaporableMm: readonly [number, number];
  evaporableMm: readonly [number, number];
};

/**
 * Water a soil holds for plants. Source: FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes & Smith
 * 1998), table 19, column θFC − θWP; the class's middle is used, nearer to gardeners' figures (loam
 * 167 mm a metre, Utah State University ENGR/BIE/WM-37, 2002) than the difference of the middles of the other
 * two columns. Readily available share 5–10 % higher on sand and
 * lower on clay: same source, chapter 8; the middle, 7.5 %, is used. Evaporable water: table 19 too, its last columns.
 */
export const soils: Readonly<Record<SoilTexture, Soil>> = {
  sand: {
    availableWater: [0.05, 0.11],
    readilyFactor: 1.075,
    readilyEvaporableMm: [2, 7],
    evaporableMm: [6, 12],
  },
  'loamy-sand': {
    availableWater: [0.06, 0.12],
    readilyFactor: 1,
    readilyEvaporableMm: [4, 8],
    evaporableMm: [9, 14],
  },
  'sandy-loam': {
    availableWater: [0.11, 0.15],
    readilyFactor: 1,
    readilyEvaporableMm: [6, 10],
    evaporableMm: [15, 20],
  },
  loam: {
    availableWater: [0.13, 0.18],
    readilyFactor: 1,
    readilyEvaporableMm: [8, 10],
    evaporableMm: [16, 22],
  },
  'silt-loam': {
    availableWater: [0.13, 0.19],
    readilyFactor: 1,
    readilyEvaporableMm: [8, 11],
    evaporableMm: [18, 25],
  },
  silt: {
    availableWater: [0.16, 0.2],
    readilyFactor: 1,
    readilyEvaporableMm: [8, 11],
    evaporableMm: [22, 26],
  },
  'silty-clay-loam': {
    availableWater: [0.13, 0.18],
    readilyFactor: 1,
    readilyEvaporableMm: [8, 11],
    evaporableMm: [22, 27],
  },
  'silty-clay': {
    availableWater: [0.13, 0.19],
    readilyFactor: 1,
    readilyEvaporableMm: [8, 12],
    evaporableMm: [22, 28],
  },
  clay: {
    availableWater: [0.12, 0.2],
    readilyFactor: 0.925,
    readilyEvaporableMm: [8, 12],
    evaporableMm: [22, 29],
  },
};

/** The names of {@link soils}. */
export const soilTextures = Object.keys(soils) as readonly SoilTexture[];

/** Water the soil holds for plants, mm per m of depth: the middle of its class. */
export function availableMmPerM(texture: SoilTexture): number {
  const [low, high] = soils[texture].availableWater;
  return 500 * (low + high);
}

/** What evaporates from bare ground before it slows down, and in all, mm: the middles of its class. */
export function evaporableMm(texture: SoilTexture): { readilyMm: number; totalMm: number } {
  const middle = ([low, high]: readonly [number, number]) => (low + high) / 2;
  return {
    readilyMm: middle(soils[texture].readilyEvaporableMm),
    totalMm: middle(soils[texture].evaporableMm),
  };
}
