export { cropLineOf } from './crop-line-of.ts';
export { waterLevel, yearLayout } from './year-layout.ts';
export { YearLine } from './year-line.tsx';
export { workTableOf, yearLineOf, yearTableOf } from './year-line-of.ts';
export type { CropMarkKind, WorkMark, YearLineProps } from './year-line-props.ts';
export { allWords, yearWords } from './year-words.ts';
