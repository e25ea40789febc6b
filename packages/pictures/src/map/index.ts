export { AtlasMap, type AtlasMapProps, discPxOf, rowWidthOf } from './atlas-map.tsx';
export { cellOf } from './cell.ts';
export { type LandShape, landShapes } from './land-shapes.ts';
export { type MapFrame, mapFrame } from './map-frame.ts';
export { AtlasKey, discsMm, type MapKeyWords } from './map-key.tsx';
export { mapKeyWords } from './map-key-words.ts';
export { drawCell, inkings, type MarkLook, type Pen } from './map-marks.ts';
export { type MapPoint, type MapShows, mapShows } from './map-shows.ts';
