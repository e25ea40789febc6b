export { climateAssetPath, readClimateNodes } from './read-climate-nodes.ts';
