export { fitSheet, type SheetYear } from './fit-sheet.ts';
export { handoutYear } from './handout-year.ts';
export { type Group, type Placed, setSheet } from './set-sheet.ts';
export type { Measure, Sheet } from './sheet.ts';
export { sheetBody } from './sheet-body.ts';
export { pageRule, sheetCss } from './sheet-css.ts';
export { type EmbeddedFace, sheetHtml } from './sheet-html.ts';
export { type Face, gaps, looks, type Paper, papers, type SheetColour, sheetColours } from './sheet-look.ts';
