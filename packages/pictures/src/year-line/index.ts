export { type CropFacts, cropFactsOf } from './crop-facts.ts';
export { cropLineOf } from './crop-line-of.ts';
export { cropSaid } from './crop-said.ts';
export { YearLine } from './year-line.tsx';
export { skyLineOf, workTableOf, yearLineOf, yearTableOf } from './year-line-of.ts';
export type { CropLine, WorkMark, YearLineProps } from './year-line-props.ts';
