/*
 * Losses in store that were read in a source. What is compared was printed there; `told` says what of the conditions
 * was not, and was filled in from memory.
 */

/** Air that is held, so many days one after the other (the last to the end), or a usual store at a place. */
export type CaseAir =
  | readonly { days: number; tempC: number; humidityPct: number }[]
  | {
      at: readonly [latitudeDeg: number, longitudeDeg: number, elevationM: number];
      store: 'shed' | 'kitchen';
      /** 1…12, lifted at its middle. */
      month: number;
    };

/** What is compared. Losses of weight are of cured bulbs: what dries away in the first three weeks is not in them. */
type CaseMeasure =
  | 'rotten'
  | 'sprouted'
  /** Neither sprouted nor rotten. */
  | 'sound'
  | 'wasted'
  | 'weight lost'
  | 'weight lost with rot'
  /** Mean of the days, not of the last. */
  | 'weight lost, mean'
  /** Weight of what has not rotted, sprouted or not. */
  | 'weight kept'
  /** Days until half the bulbs are lost. */
  | 'lasts';

export type StoreCase = {
  name: string;
  source: string;
  keepsMonths: readonly [number, number];
  air: CaseAir;
  days: number;
  measure: CaseMeasure;
  /** Share, or days; a range where two ends are printed, a bound where `least`. */
  published: readonly [low: number, high: number];
  told: string;
};

/* Kinds as the catalogue has them: usual keeping, months. */
const sweet = [1, 2] as const;
const overwintered = [2, 3] as const;
const spanish = [3, 4] as const;
const creole = [3, 5] as const;
const hard = [8, 10] as const;

const held = (tempC: number, humidityPct: number) => [{ days: 0, tempC, humidityPct }] as const;
const one = (value: number) => [value, value] as const;

const bangladesh = 'Sohany, Sarker & Mahomud 2016, World J. Eng. Technol. 4:261–266';
const denmark = 'Sorensen & Edelenbos 2012, Acta Hort. 969:183–188';
const dailekh = 'Luitel et al., onion genotypes at Dailekh, Karnali (2018–20)';
const tandojam = 'Effect of storage methods, Pak. J. Agric. Agric. Eng. Vet. Sci. 119 (Tandojam)';
const bahirDar = 'Eriballo, Satheesh & Fanta 2022, Philipp. J. Sci. 151:437–448';
const yola = 'Abubakar, Maduako & Ahmed 2019, Agric. Sci. Tech. 11';
const davis = 'UC Davis, dry onions fact sheet (Suslow)';
const cargo = 'transtec.ru cargo notes';

const dried = [
  { days: 28, tempC: 25, humidityPct: 60 },
  { days: 0, tempC: 1, humidityPct: 70 },
] as const;
const dailekhRoom = { at: [28.84, 81.71, 1255], store: 'kitchen', month: 5 } as const;
const tandojamAir = { at: [25.43, 68.53, 20], store: 'shed', month: 4 } as const;
const bahirDarAir = { at: [11.6, 37.38, 1800], store: 'shed', month: 3 } as const;
const yolaAir = { at: [9.35, 12.5, 190], store: 'shed', month: 3 } as const;

function several(common: Omit<StoreCase, 'name' | 'published'>, shares: Readonly<Record<string, number>>) {
  return Object.entries(shares).map(
    ([name, share]): StoreCase => ({ ...common, name, published: one(share) }),
  );
}

const placed = 'month of lifting and where it lies on the map from memory';

export const storeCases: readonly StoreCase[] = [
  {
    name: 'Bangladesh, 25 °C, 75 %',
    source: bangladesh,
    keepsMonths: creole,
    air: held(25, 75),
    days: 60,
    measure: 'weight lost',
    published: one(0.2325),
    told: 'bought onions, so their age is not known',
  },
  ...(['sprouted', 'rotten'] as const).map(
    (measure): StoreCase => ({
      name: 'Bangladesh, 13 °C in polythene',
      source: bangladesh,
      keepsMonths: creole,
      air: held(13, 95),
      days: 60,
      measure,
      published: one(measure === 'sprouted' ? 0.6725 : 0.1778),
      told: 'bought onions, so their age is not known; damp of the pouch from memory',
    }),
  ),
  ...several(
    {
      source: denmark,
      keepsMonths: sweet,
      air: dried,
      days: 94,
      measure: 'rotten',
      told: 'damp while they dried from memory',
    },
    { 'Denmark, sweet, tops cut, 4 weeks at 25 °C': 0.29, 'Denmark, sweet, cured in the field': 0.17 },
  ),
  ...several(
    {
      source: denmark,
      keepsMonths: sweet,
      air: dried,
      days: 85,
      measure: 'sound',
      told: 'damp while they dried from memory',
    },
    { 'Denmark, sweet, cured in the field, ordinary air': 0.56 },
  ),
  ...several(
    { source: bahirDar, keepsMonths: creole, air: bahirDarAir, days: 90, measure: 'sprouted', told: placed },
    { 'Bahir Dar, airy store': 0.0103 },
  ),
  ...several(
    { source: bahirDar, keepsMonths: creole, air: bahirDarAir, days: 90, measure: 'rotten', told: placed },
    { 'Bahir Dar, airy store, rot and mould': 0.0454 },
  ),
  ...several(
    {
      source: tandojam,
      keepsMonths: creole,
      air: tandojamAir,
      days: 90,
      measure: 'weight lost',
      told: placed,
    },
    { 'Tandojam, wooden rack': 0.0419, 'Tandojam, net bag': 0.0854, 'Tandojam, open ground': 0.104 },
  ),
  ...several(
    { source: tandojam, keepsMonths: creole, air: tandojamAir, days: 90, measure: 'rotten', told: placed },
    {
      'Tandojam, wooden rack, black mould': 0.0323,
      'Tandojam, net bag, black mould': 0.1333,
      'Tandojam, open ground, black mould': 0.175,
    },
  ),
  ...several(
    { source: tandojam, keepsMonths: creole, air: tandojamAir, days: 90, measure: 'sprouted', told: placed },
    { 'Tandojam, all three': 0 },
  ),
  ...several(
    {
      source: dailekh,
      keepsMonths: creole,
      air: dailekhRoom,
      days: 120,
      measure: 'weight lost with rot',
      told: `${placed}; whether rot is in the weight is not said`,
    },
    { 'Dailekh, AVON-1016': 0.365, 'Dailekh, Red Creole': 0.345, 'Dailekh, AVON-1052': 0.36 },
  ),
  ...several(
    { source: dailekh, keepsMonths: creole, air: dailekhRoom, days: 120, measure: 'rotten', told: placed },
    { 'Dailekh, AVON-1016': 0.244, 'Dailekh, Red Creole': 0.171, 'Dailekh, AVON-1052': 0.206 },
  ),
  ...several(
    {
      source: yola,
      keepsMonths: creole,
      air: yolaAir,
      days: 140,
      measure: 'weight lost, mean',
      told: placed,
    },
    { 'Yola, above 70 mm': 0.051, 'Yola, 50–70 mm': 0.048, 'Yola, below 50 mm': 0.042 },
  ),
  ...['Serrana', 'XPH 6074'].map(
    (cultivar): StoreCase => ({
      name: `Morogoro, ${cultivar}`,
      source:
        'Field performance and storage of some tropical short-day onions, West Afr. J. Appl. Ecol. 8 (2005)',
      keepsMonths: creole,
      air: { at: [-6.85, 37.65, 525], store: 'shed', month: 10 },
      days: 152,
      measure: 'weight kept',
      published: [0.5, 1],
      told: placed,
    }),
  ),
  {
    name: 'England, overwintered, dried at 30 °C, then ambient 3–5 months',
    source: 'J. Hort. Sci. 57:339–348, 1982',
    keepsMonths: overwintered,
    air: { at: [52.2, -1.6, 50], store: 'shed', month: 7 },
    days: 120,
    measure: 'wasted',
    published: one(0.2),
    told: placed,
  },
  ...(
    [
      ['pungent, 0 °C', davis, hard, 182, 274, 0],
      ['Spanish sweet, 0 °C', cargo, spanish, 122, 152, 0],
      ['Bermuda and Grano, 0 °C', cargo, sweet, 30, 61, 0],
      ['mild, 0 °C', davis, sweet, 15, 30, 0],
      ['Texas Grano 1015Y, 5 °C', 'Yoo 1987, PhD thesis, Texas A&M University', sweet, 42, 56, 5],
    ] as const
  ).map(
    ([name, source, keepsMonths, low, high, tempC]): StoreCase => ({
      name,
      source,
      keepsMonths,
      air: held(tempC, 68),
      days: high,
      measure: 'lasts',
      published: [low, high],
      told:
        tempC === 0
          ? 'what counts as keeping is not said'
          : 'printed for freezing to 13 °C; damp from memory',
    }),
  ),
];
