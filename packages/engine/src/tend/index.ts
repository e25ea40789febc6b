export type { Feed, FeedAnswer } from './feed-answer.ts';
export { feedOf } from './feed-of.ts';
export { leafDates } from './leaf-dates.ts';
export { type Ground, groundOf, groundUnsaid, type TendedCrop } from './tended-crop.ts';
export { topsBeginDays } from './tops-begin.ts';
export type { WaterAnswer, WaterAssumption, WaterDay, WaterToday } from './water-answer.ts';
export { type GivenSoFar, unnotedDays } from './water-given.ts';
export { type WaterOptions, waterOf } from './water-of.ts';
