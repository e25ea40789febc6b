/** The door for Node: reads the assets from files. */
export { readClimateNodes } from './climate/index.ts';
export { loadGazetteer, loadLandMask, loadLandOutline } from './places/node.ts';
export { publishedPractice } from './practice/node.ts';
export { readSiteAssets } from './site/node.ts';
