import { prepare } from './prepare.ts';
import { season } from './season.ts';
import { whatMovesIt } from './what-moves-it.ts';
import { when } from './when.ts';
import { where } from './where.ts';
import { winterStand } from './winter-stand.ts';

/** All that the engine's worker can be asked; see each file. */
export const engineHandlers = { prepare, season, whatMovesIt, when, where, winterStand };
