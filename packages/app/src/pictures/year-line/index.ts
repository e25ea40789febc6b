export { cropLineOf } from './crop-line-of.ts';
export { YearLine } from './year-line.tsx';
export { yearLineOf, yearTableOf } from './year-line-of.ts';
export type { YearLineProps } from './year-line-props.ts';
