export { cropLineOf } from './crop-line-of.ts';
export { YearLine } from './year-line.tsx';
export { workTableOf, yearLineOf, yearTableOf } from './year-line-of.ts';
export type { WorkMark, YearLineProps } from './year-line-props.ts';
