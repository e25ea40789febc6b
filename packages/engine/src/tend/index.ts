export type { Feed, FeedAnswer } from './feed-answer.ts';
export { feedOf } from './feed-of.ts';
export { leafDates } from './leaf-dates.ts';
export { type Ground, groundOf, groundUnsaid, type TendedCrop } from './tended-crop.ts';
export type { WaterAnswer, WaterDay, WaterToday } from './water-answer.ts';
