export { bulbing } from './bulbing.ts';
export { canopyOf } from './canopy.ts';
export { cold, stalkDays } from './cold.ts';
export { gain } from './gain.ts';
export { leaves } from './leaves.ts';
export { ripening } from './ripening.ts';
export { water } from './water.ts';
export { hardeningDays, standLost, winter } from './winter.ts';
