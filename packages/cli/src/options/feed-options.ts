import {
  type Fertility,
  fertilities,
  type Ground,
  gardenRanges,
  organicFeeds,
  readFeedProduct,
  soilTextures,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { nearest } from '../refusal/nearest.ts';
import { refuse } from '../refusal/refusal.ts';
import { parseNumber } from '../values/number.ts';

/** Options of `feed` beside those of a plan, as commander gives them. */
export type RawFeedOptions = {
  product?: string;
  soil?: string;
  aim?: string;
  bedM2?: string;
  compost?: string;
  afterLegume?: boolean;
  ph?: string;
};

/** kg/m²; nothing above what trials gave (Oregon and Idaho, 13.4 kg/m²). */
export const aimRange = [0.5, 15] as const;
const bedRange = [0.01, 1_000_000] as const;

export type FeedOptions = {
  /** What was said of the ground; it comes before what the bed of a garden says. */
  ground: Partial<Ground>;
  aimKgPerM2: number | null;
  /** Left to the plan; undefined: nothing was said of it. */
  texture: string | undefined;
};

export function readFeedOptions(raw: RawFeedOptions, { any }: Pick<Speaker, 'any'>): FeedOptions {
  const number = (
    text: string | undefined,
    field: string,
    [min, max]: readonly [number, number],
    unit?: string,
  ) => (text === undefined ? null : parseNumber(text, { field, min, max, ...(unit && { unit }) }));
  const { texture, fertility } = readSoil(raw.soil);
  const said: Partial<Ground> = {
    fertility,
    feedProduct: readProduct(raw.product, any),
    areaM2: number(raw.bedM2, '--bed-m2', bedRange, 'm²'),
    compostKgPerM2: number(raw.compost, '--compost', gardenRanges.compostKgPerM2, 'kg/m²'),
    afterLegume: raw.afterLegume ?? null,
    soilPh: number(raw.ph, '--ph', gardenRanges.soilPh),
  };
  return {
    ground: Object.fromEntries(Object.entries(said).filter(([, value]) => value !== null)),
    aimKgPerM2: number(raw.aim, '--aim', aimRange, 'kg/m²'),
    texture,
  };
}

function readProduct(text: string | undefined, any: Speaker['any']): string | null {
  if (text === undefined) return null;
  const product = readFeedProduct(text);
  if (product) return product.name;
  throw refuse('feed-product', {
    field: '--product',
    values: { value: text },
    expected: any(organicFeeds),
    nearest: nearest(text.trim(), organicFeeds),
  });
}

/** `sand`, `poor` or `sand,poor`: no texture is called as what a soil gives, so that each is known by its word. */
function readSoil(text: string | undefined): { texture: string | undefined; fertility: Fertility | null } {
  const words = (text?.split(',') ?? []).map((word) => word.trim().toLowerCase());
  const gives = words.filter((word) => fertilities.some((known) => known === word));
  const textures = words.filter((word) => soilTextures.some((known) => known === word));
  if (gives.length + textures.length < words.length || gives.length > 1 || textures.length > 1) {
    const all = [...soilTextures, ...fertilities];
    const wrong = words.find((word) => !all.some((known) => known === word));
    throw refuse('feed-soil', {
      field: '--soil',
      values: { value: text ?? '' },
      nearest: wrong === undefined ? [] : nearest(wrong, all),
    });
  }
  return { texture: textures[0], fertility: (gives[0] as Fertility | undefined) ?? null };
}
