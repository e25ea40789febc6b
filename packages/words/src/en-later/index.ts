import { alliums } from './alliums.ts';
import { appFeed } from './app-feed.ts';
import { appGardenSteps } from './app-garden-steps.ts';
import { appJobs } from './app-jobs.ts';
import { appKeep } from './app-keep.ts';
import { appSeason } from './app-season.ts';
import { appSeasonFolds } from './app-season-folds.ts';
import { appSeen } from './app-seen.ts';
import { appWeather } from './app-weather.ts';
import { appWhen } from './app-when.ts';
import { appWhich } from './app-which.ts';
import { beds } from './beds.ts';
import { feed } from './feed.ts';
import { jobs } from './jobs.ts';
import { keep } from './keep.ts';
import { lift } from './lift.ts';
import { spacing } from './spacing.ts';
import { watering } from './watering.ts';

/** What only pages after the first one say: fetched with them. */
export const later = [
  alliums,
  appFeed,
  appGardenSteps,
  appJobs,
  appKeep,
  appSeason,
  appSeasonFolds,
  appSeen,
  appWeather,
  appWhen,
  appWhich,
  beds,
  feed,
  jobs,
  keep,
  lift,
  spacing,
  watering,
] as const;
