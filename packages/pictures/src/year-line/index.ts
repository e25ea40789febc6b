export { byYears, type CommonAxis, commonAxisOf, halfYearDays, yearsToAxis } from './common-axis.ts';
export { commonScaleOf } from './common-scale.ts';
export { type CropFacts, cropFactsOf } from './crop-facts.ts';
export { cropInYear } from './crop-in-year.ts';
export { cropLineOf } from './crop-line-of.ts';

export { cropSaid } from './crop-said.ts';
export { LowYearLine } from './low-year-line.tsx';
export { waterLevel, yearLayout } from './year-layout.ts';

export { YearLine } from './year-line.tsx';
export { skyLineOf, workTableOf, yearLineOf, yearTableOf } from './year-line-of.ts';
export type { CommonScale, CropLine, CropMarkKind, WorkMark, YearLineProps } from './year-line-props.ts';
export { allWords, yearWords } from './year-words.ts';
