/** Pictures: functions of plain props that draw SVG in the colours of the page. */
export { ChanceBar } from './chance-bar.tsx';
export { DataTable, type DataTableProps } from './data-table.tsx';
export { FitWidth } from './fit-width.tsx';
export { inkOf } from './ink.ts';
export { pngOfSvg } from './png-of-svg.ts';
export * from './section/index.ts';
export { SoundBulbs } from './sound-bulbs.tsx';
export * from './start-hills/index.ts';
export * from './store-year/index.ts';
export { svgText } from './svg-text.ts';
export * from './symptoms/index.ts';
export * from './weather-days/index.ts';
export * from './year-line/index.ts';
