import { locate } from './locate.ts';
import { prepareGround } from './prepare-ground.ts';
import { findTowns, loadSmallTowns } from './towns.ts';

/** Fetched when it is asked for: one page needs it. */
const latitudeClimates = async () => (await import('./latitude-climates.ts')).latitudeClimates();

/** All that the worker for towns and places can be asked; see each file. */
export const groundHandlers = { findTowns, latitudeClimates, loadSmallTowns, locate, prepareGround };
