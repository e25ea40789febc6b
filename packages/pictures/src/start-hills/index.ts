export { hillsDayAt, hillsXOf } from './hills-layout.ts';
export { StartHills } from './start-hills.tsx';
export { startHillsOf, startHillsTableOf } from './start-hills-of.ts';
export type { HillStart } from './start-hills-props.ts';
export { StartMarkOverlay } from './start-mark.tsx';
