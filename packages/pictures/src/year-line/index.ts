export { byYears, type CommonAxis, commonAxisOf, halfYearDays, yearsToAxis } from './common-axis.ts';
export { commonScaleOf } from './common-scale.ts';
export { cropInYear } from './crop-in-year.ts';
export { cropLineOf } from './crop-line-of.ts';
export { YearLine } from './year-line.tsx';
export { workTableOf, yearLineOf, yearTableOf } from './year-line-of.ts';
export type { CommonScale, WorkMark, YearLineProps } from './year-line-props.ts';
