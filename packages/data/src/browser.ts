/** The door for browsers: fetches the assets. */
export { fetchClimateNodes } from './climate/browser.ts';
export { fetchLandMask, fetchLandOutline, fetchLargeTowns, fetchSmallTowns } from './places/browser.ts';
export { fetchPractice } from './practice/browser.ts';
export { fetchSiteAssets } from './site/browser.ts';
