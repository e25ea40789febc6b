import type { DayLengthClass, OnionType, StartMethod } from '@neckfall/engine';

/** Only bulb onions are modelled and ranked; the others are listed so that a grower finds out why not. */
export type CropKind = 'bulb-onion' | 'shallot' | 'multiplier';
/** What is grown as an onion. */
export const cropKinds: readonly CropKind[] = ['bulb-onion', 'shallot', 'multiplier'];

/** Colour of the dry skin. */
export type Colour = 'yellow' | 'brown' | 'red' | 'pink' | 'white';
/** Colours of the dry skin. */
export const colours: readonly Colour[] = ['yellow', 'brown', 'red', 'pink', 'white'];

/** `top`: deep, tapering to the root (Grano kinds); `cluster`: several small bulbs together. */
export type Shape = 'flat' | 'flattened-globe' | 'globe' | 'tall-globe' | 'top' | 'long' | 'cluster';
/** Shapes of the bulb. */
export const shapes: readonly Shape[] = [
  'flat',
  'flattened-globe',
  'globe',
  'tall-globe',
  'top',
  'long',
  'cluster',
];

/** What an onion is grown for. */
export type Use =
  | 'sets'
  | 'overwinters'
  | 'storage'
  | 'sweet'
  | 'spanish'
  | 'pickling'
  | 'drying'
  | 'wet-season';
/** What an onion is grown for. */
export const cultivarUses: readonly Use[] = [
  'sets',
  'overwinters',
  'storage',
  'sweet',
  'spanish',
  'pickling',
  'drying',
  'wet-season',
];

/** When it ripens among others of its class. */
export type Maturity = 'early' | 'middle' | 'late';
/** From the earliest. */
export const maturities: readonly Maturity[] = ['early', 'middle', 'late'];

/** What told the type: see docs/catalogue.md. */
export type TypeReason = 'printed' | 'need' | 'region' | 'use' | 'maturity' | 'keeping';
/** What may have told the type, the surest first. */
export const typeReasons: readonly TypeReason[] = ['printed', 'need', 'region', 'use', 'maturity', 'keeping'];

/**
 * Day length from which bulbs were published to form, h.
 * `sun-up`: sunrise to sunset, or printed without saying; `twilight`: counts twilight; `lamps`: a growth room, where
 * light goes on and off; `onset-seen`: sunrise to sunset on the day bulbs were seen in a field, later than the need.
 */
export type PublishedNeed = {
  fromH: number;
  toH: number;
  light: 'sun-up' | 'twilight' | 'lamps' | 'onset-seen';
  /** Where it was found, degrees; null under lamps. */
  latitudeDeg: number | null;
};

/** Where a field comes from: the key of a source, or general knowledge that was not checked. */
export type Origin = string | 'memory';

/** A publication. */
export type Source = { title: string; url: string };

/** A named onion. What is null is not known. */
export type Cultivar = {
  /** The name in small letters and hyphens. */
  id: string;
  name: string;
  aliases: readonly string[];
  kind: CropKind;
  /** As printed on packets; with a published class this can differ from the type's own. */
  class: DayLengthClass;
  /** Which of the five types it is taken as. */
  type: OnionType;
  argued: readonly TypeReason[];
  need: PublishedNeed | null;
  colour: Colour | null;
  shape: Shape | null;
  uses: readonly Use[];
  mild: boolean | null;
  maturity: Maturity | null;
  daysToMaturity: {
    fromDays: number;
    toDays: number;
    since: 'sowing' | 'transplanting' | 'set-planting';
  } | null;
  hybrid: boolean | null;
  bolting: 'slow' | 'ready' | null;
  keepsMonths: readonly [from: number, to: number];
  /** `cultivar`: months published for this onion; `type`: those usual for its kind (memory). */
  keepsFrom: 'cultivar' | 'type';
  /** Dry matter of the bulb, share of fresh mass. */
  dryMatterShare: number | null;
  /** Where it is grown or was tried, in words. */
  regions: readonly string[];
  /** ISO 3166-1 alpha-2 codes of countries whose seed racks and catalogues commonly have it; far from all. */
  soldIn: readonly string[];
  /** How it is sold or raised; empty for kinds that are not modelled. */
  starts: readonly StartMethod[];
  /** For each field that is known. */
  origins: Readonly<Partial<Record<CultivarField, Origin>>>;
};

/** Fields that need an origin. */
export type CultivarField = Exclude<keyof Cultivar, 'id' | 'type' | 'argued' | 'keepsFrom' | 'origins'>;
