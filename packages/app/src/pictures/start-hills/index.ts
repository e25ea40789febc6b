export { hillsDayAt, hillsXOf } from './hills-layout.ts';
export { StartHills } from './start-hills.tsx';
export { type StartHillsInput, startHillsOf, startHillsTableOf } from './start-hills-of.ts';
export type { HillStart, StartHillsProps, Trouble } from './start-hills-props.ts';
export { StartMarkOverlay } from './start-mark.tsx';
