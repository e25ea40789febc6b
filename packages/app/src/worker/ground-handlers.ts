import { prepareGround } from './assets.ts';
import { locate } from './locate.ts';
import { findTowns, loadSmallTowns } from './towns.ts';

/** All that the worker for towns and places can be asked; see each file. */
export const groundHandlers = { findTowns, loadSmallTowns, locate, prepareGround };
