import { ownOffers } from './own-offers.ts';
import { prepare } from './prepare.ts';
import { season } from './season.ts';
import { seasonAhead } from './season-ahead.ts';
import { whatMovesIt } from './what-moves-it.ts';
import { when } from './when.ts';
import { whenChoice } from './when-choice.ts';
import { whenToday } from './when-today.ts';
import { whenYear } from './when-year.ts';
import { where, whereClasses } from './where.ts';
import { whereToday } from './where-today.ts';
import { whichGrow } from './which-grow.ts';
import { whichNow } from './which-now.ts';
import { whichOnion } from './which-onion.ts';
import { whichRank } from './which-rank.ts';
import { winterStand } from './winter-stand.ts';

/** All that the engine's worker can be asked; see each file. */
export const engineHandlers = {
  ownOffers,
  prepare,
  season,
  seasonAhead,
  whatMovesIt,
  when,
  whenChoice,
  whenToday,
  whenYear,
  where,
  whereClasses,
  whereToday,
  whichGrow,
  whichNow,
  whichOnion,
  whichRank,
  winterStand,
};
