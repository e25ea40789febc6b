import { season } from './season.ts';
import { when } from './when.ts';
import { where } from './where.ts';

/** All that the engine's worker can be asked; see each file. */
export const engineHandlers = { season, when, where };
