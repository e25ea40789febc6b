/*
 * What a grower may say of a bed beside its texture, as garden files, options and forms have it.
 */

/** How water comes to a bed. */
export const wateringWays = ['can', 'hose', 'drip'] as const;
/** One of {@link wateringWays}. */
export type WateringWay = (typeof wateringWays)[number];

/** What a soil gives of nitrogen by itself. */
export const fertilities = ['poor', 'ordinary', 'rich'] as const;
/** One of {@link fertilities}. */
export type Fertility = (typeof fertilities)[number];
