export { cropLineOf } from './crop-line-of.ts';
export { type PlaceYear, placeYear, sunUpAtPhotoperiod } from './place-year.ts';
export { YearLine } from './year-line.tsx';
export { cropYear, plainYearStart, type YearLineInput, yearLineOf, yearTableOf } from './year-line-of.ts';
export type { CropLine, CropMark, CropMarkKind, Need, YearLineProps } from './year-line-props.ts';
