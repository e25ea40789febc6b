export { densityOf, spacingOf } from './density.ts';
export {
  type Between,
  type Needed,
  neededFor,
  type SeedAge,
  seedAges,
  standFigures,
} from './needed.ts';
