export { type Onion, type OnionColour, type OnionForm, onionColours, onionPaint } from './onion.ts';
export { scaleFor } from './row-layout.ts';
export {
  type NamedSummary,
  onionOf,
  onionOnDay,
  type SectionAnswer,
  sectionOf,
  sectionRowOf,
} from './section-of.ts';
export { type CaptionedOnion, SectionRow, type SectionRowProps } from './section-row.tsx';
