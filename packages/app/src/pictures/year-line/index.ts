export { cropLineOf } from './crop-line-of.ts';
export { YearLine } from './year-line.tsx';
export { type YearLineInput, yearLineOf, yearTableOf } from './year-line-of.ts';
export type { CropLine, CropMark, CropMarkKind, Need, YearLineProps } from './year-line-props.ts';
