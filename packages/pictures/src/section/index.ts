export {
  type Onion,
  type OnionForm,
  type OnionLook,
  onionColours,
  onionPaint,
} from './onion.ts';
export {
  sectionOf,
  sectionRowOf,
} from './section-of.ts';
export { SectionRow } from './section-row.tsx';
export { SoundBulbs } from './sound-bulbs.tsx';
export { whatIfSectionOf, whatIfTableOf } from './what-if-of.ts';
