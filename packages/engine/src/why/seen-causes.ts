import type { SeenCause } from './causes.ts';
import { type Symptom, symptoms } from './symptoms.ts';

/**
 * Causes that no run can know: how often a crop has one so badly that its grower asks, and how likely each symptom then is
 * (0…1). All memory, adjustable, with the directions of the sources named; symptoms left out come no oftener with it.
 */
type SeenCauseTable = {
  prior: number;
  shows: Partial<Record<Symptom, number>>;
};

/** How often each comes, and what it shows. */
export const seenCauses: Readonly<Record<SeenCause, SeenCauseTable>> = {
  hunger: { prior: 0.05, shows: { small: 0.55, 'dry-tips': 0.3, 'fell-early': 0.15 } },
  // seen: University of Minnesota Extension (late, thick necks, soft bulbs, green flesh)
  'late-nitrogen': {
    prior: 0.06,
    shows: {
      'thick-necks': 0.6,
      'tops-stood': 0.4,
      'neck-rot': 0.3,
      sprouted: 0.25,
      'rotted-in-store': 0.25,
      soft: 0.2,
      split: 0.15,
      'no-bulb': 0.1,
      'green-shoulders': 0.1,
    },
  },
  // seen: North Platte 1969–70 (yield cut by 20 to 65 %, bulbs sooner)
  weeds: { prior: 0.07, shows: { small: 0.65, 'fell-early': 0.1 } },
  // seen: Brackish water irrigation of onion in the desert
  salt: { prior: 0.02, shows: { small: 0.6, 'dry-tips': 0.6, 'few-came-up': 0.3, wilted: 0.2 } },
  // seen: Pelter et al. (early water stress and single centres)
  'uneven-water': {
    prior: 0.1,
    shows: { split: 0.6, 'dry-tips': 0.15, 'thick-necks': 0.1, small: 0.1 },
  },
  // seen: NDSU 2001 (cold snap at two leaves, splits); MSU Extension 1985 (flowers after a cool spell)
  'spring-cold-snap': { prior: 0.05, shows: { split: 0.3, flowered: 0.3, 'dry-tips': 0.1 } },
  // seen: USDA Circular 512
  'old-seed': { prior: 0.07, shows: { 'few-came-up': 0.8 } },
  // seen: Finch-Savage (moisture in the first days)
  'dry-seedbed': { prior: 0.1, shows: { 'few-came-up': 0.75 } },
  // seen: Ontario, Identification of diseases and disorders of onions
  'damping-off': {
    prior: 0.06,
    shows: { 'seedlings-toppled': 0.85, 'few-came-up': 0.4, 'gone-in-a-row': 0.2 },
  },
  'birds-or-cutworms': {
    prior: 0.08,
    shows: { 'gone-in-a-row': 0.6, 'out-of-the-ground': 0.55, 'seedlings-toppled': 0.25 },
  },
  // seen: UC IPM, maggots (half of a stand and more)
  'onion-fly': {
    prior: 0.07,
    shows: { maggots: 0.92, wilted: 0.5, 'gone-in-a-row': 0.4, soft: 0.4, 'dry-tips': 0.15 },
  },
  // seen: UC IPM, onion thrips
  thrips: {
    prior: 0.08,
    shows: { 'silver-streaks': 0.92, 'dry-tips': 0.3, small: 0.25, 'purple-spots': 0.1 },
  },
  // seen: UC IPM, INRA HYPP
  'downy-mildew': {
    prior: 0.07,
    shows: {
      'grey-fur': 0.9,
      'bent-leaves': 0.3,
      'dry-tips': 0.3,
      small: 0.25,
      sprouted: 0.15,
      soft: 0.1,
    },
  },
  // seen: OMAFRA IPM
  'purple-blotch': { prior: 0.04, shows: { 'purple-spots': 0.92, 'bent-leaves': 0.3, 'dry-tips': 0.15 } },
  'leaf-blight': { prior: 0.05, shows: { 'dry-tips': 0.6, 'bent-leaves': 0.2, small: 0.15 } },
  // seen: PNW Plant Disease Handbook, NMSU Circular 538
  'pink-root': {
    prior: 0.04,
    shows: { 'pink-roots': 0.95, small: 0.4, 'dry-tips': 0.4, wilted: 0.25 },
  },
  // seen: UC IPM home garden, white rot
  'white-rot': {
    prior: 0.04,
    shows: {
      'white-fluff': 0.95,
      wilted: 0.5,
      'gone-in-a-row': 0.3,
      soft: 0.4,
      'dry-tips': 0.2,
      'rotted-in-store': 0.1,
    },
  },
  'basal-rot': {
    prior: 0.03,
    shows: { soft: 0.4, 'rotted-in-store': 0.35, wilted: 0.35, 'dry-tips': 0.25, 'white-fluff': 0.2 },
  },
  // seen: UC IPM, bacterial soft rots; OMAFRA IPM
  'bacterial-rot': {
    prior: 0.05,
    shows: { soft: 0.75, 'rotted-in-store': 0.4, 'neck-rot': 0.15, 'bent-leaves': 0.1 },
  },
  // seen: USU Extension 2013 (enters green necks, shows after 4–8 weeks)
  'neck-rot-mould': { prior: 0.07, shows: { 'neck-rot': 0.9, 'rotted-in-store': 0.5, soft: 0.1 } },
  'black-mould': { prior: 0.04, shows: { 'black-dust': 0.95, 'rotted-in-store': 0.15 } },
  // seen: Wukasch & Hofstra 1977
  ozone: { prior: 0.02, shows: { 'dry-tips': 0.5 } },
  wind: { prior: 0.05, shows: { 'bent-leaves': 0.7, 'dry-tips': 0.2 } },
  'light-on-bulbs': { prior: 0.08, shows: { 'green-shoulders': 0.88 } },
  // seen: Cornell Coop. Ext., OMAFRA IPM
  'sun-on-lifted-bulbs': { prior: 0.05, shows: { scalded: 0.9, soft: 0.25, 'rotted-in-store': 0.15 } },
  // seen: Maude et al. (slow drying raised neck rot)
  'badly-dried': {
    prior: 0.1,
    shows: { 'rotted-in-store': 0.5, 'neck-rot': 0.35, 'black-dust': 0.2, sprouted: 0.15, soft: 0.1 },
  },
  // seen: OSU Malheur 2004
  'knocked-about': { prior: 0.05, shows: { 'rotted-in-store': 0.3, soft: 0.25, glassy: 0.15 } },
  'hot-kind': { prior: 0.25, shows: { 'too-hot': 0.85 } },
  // the oldest leaves dry up and ripe tops bend on every crop
  'nothing-wrong': {
    prior: 0.12,
    shows: { 'bent-leaves': 0.45, 'too-hot': 0.4, 'dry-tips': 0.35, 'fell-early': 0.35, split: 0.1 },
  },
};

/** What hardly ever comes of anything that is not on the list. */
const telling: ReadonlySet<Symptom> = new Set([
  'silver-streaks',
  'grey-fur',
  'purple-spots',
  'flowered',
  'stalk-in-bulb',
  'green-shoulders',
  'scalded',
  'white-fluff',
  'pink-roots',
  'maggots',
  'black-dust',
  'glassy',
] as const);

/** Something that is not on the list: how often, and how likely it shows as any one thing (memory). */
export const unlisted = {
  prior: 0.12,
  shows: Object.fromEntries(symptoms.map((symptom) => [symptom, telling.has(symptom) ? 0.02 : 0.12])),
} as const;
