/** Pictures: functions of plain props that draw SVG in the colours of the page. */
export { ChanceBar } from './drawing/chance-bar.tsx';
export { DataTable, type DataTableProps } from './drawing/data-table.tsx';
export { dayAtX, dayAxis, xOfDay } from './drawing/day-axis.ts';
export type { Drawn, DrawnNode } from './drawing/drawn.ts';
export type { InkColours } from './drawing/ink.ts';
export { paperColours } from './drawing/paper-colours.ts';
export { pxPerRem } from './drawing/picture.tsx';
export { svgText } from './drawing/svg-text.ts';
export * from './map/index.ts';
export * from './section/index.ts';
export * from './sheet/index.ts';
export * from './start-hills/index.ts';
export * from './store-year/index.ts';
export * from './symptoms/index.ts';
export * from './weather-days/index.ts';
export * from './year-line/index.ts';
