import { locate } from './locate.ts';
import { prepareGround } from './prepare-ground.ts';
import { findTowns, loadSmallTowns } from './towns.ts';

/** All that the worker for towns and places can be asked; see each file. */
export const groundHandlers = { findTowns, loadSmallTowns, locate, prepareGround };
