import { atlasPoints } from './atlas-points.ts';
import { beside } from './beside.ts';
import { commonAnswer } from './common-answer.ts';
import { feedAhead } from './feed-ahead.ts';
import { handout } from './handout.ts';
import { keepYear } from './keep-year.ts';
import { liftAhead } from './lift-ahead.ts';
import { ownOffers } from './own-offers.ts';
import { season } from './season.ts';
import { seasonAhead } from './season-ahead.ts';
import { spacingTried } from './spacing-tried.ts';
import { storedNow } from './stored-now.ts';
import { waterAhead } from './water-ahead.ts';
import { weatherAnswer } from './weather-answer.ts';
import { weatherRead } from './weather-read.ts';
import { weatherUsual } from './weather-usual.ts';
import { whatMovesIt } from './what-moves-it.ts';
import { when } from './when.ts';
import { whenChoice } from './when-choice.ts';
import { whenToday } from './when-today.ts';
import { whenYear } from './when-year.ts';
import { whichGrow } from './which-grow.ts';
import { whichNow } from './which-now.ts';
import { whichOnion } from './which-onion.ts';
import { whichRank } from './which-rank.ts';
import { whyAhead } from './why-ahead.ts';

/** What the first page does not ask: fetched when another does. */
export const laterHandlers = {
  atlasPoints,
  commonAnswer,
  beside,
  feedAhead,
  handout,
  liftAhead,
  keepYear,
  ownOffers,
  season,
  seasonAhead,
  spacingTried,
  storedNow,
  waterAhead,
  weatherAnswer,
  weatherRead,
  weatherUsual,
  whatMovesIt,
  when,
  whenChoice,
  whenToday,
  whenYear,
  whichGrow,
  whichNow,
  whichOnion,
  whichRank,
  whyAhead,
};
