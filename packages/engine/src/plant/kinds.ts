/** Day-length class as printed on packets. */
export type DayLengthClass = 'short' | 'intermediate' | 'long';
/** The classes, from the lowest latitudes up. */
export const dayLengthClasses: readonly DayLengthClass[] = ['short', 'intermediate', 'long'];

/** The five types behind the three classes. */
export type OnionType = 'tropical-short' | 'short' | 'intermediate' | 'early-long' | 'northern-long';
/** The types, from the lowest latitudes up. */
export const onionTypes: readonly OnionType[] = [
  'tropical-short',
  'short',
  'intermediate',
  'early-long',
  'northern-long',
];

/** The class a type is sold as. */
export const classOfType: Readonly<Record<OnionType, DayLengthClass>> = {
  'tropical-short': 'short',
  short: 'short',
  intermediate: 'intermediate',
  'early-long': 'long',
  'northern-long': 'long',
};

/** How a crop is started. */
export type StartMethod = 'direct-seed' | 'raised-seedlings' | 'bought-transplants' | 'sets';
/** The four ways to start a crop. */
export const startMethods: readonly StartMethod[] = [
  'direct-seed',
  'raised-seedlings',
  'bought-transplants',
  'sets',
];

/** How a season ends; `good` where bulbs ripen at the size that was to be had. */
export type Verdict = 'winter-killed' | 'bolts' | 'no-bulb' | 'not-ripe' | 'small' | 'good';
/** In the order in which a season is judged. */
export const verdicts: readonly Verdict[] = [
  'winter-killed',
  'bolts',
  'no-bulb',
  'not-ripe',
  'small',
  'good',
];
