import { alliums } from './alliums.ts';
import { americanLatitudes } from './american-latitudes.ts';
import { americanWhy } from './american-why.ts';
import { appAbout } from './app-about.ts';
import { appFeed } from './app-feed.ts';
import { appGardenSteps } from './app-garden-steps.ts';
import { appJobs } from './app-jobs.ts';
import { appKeep } from './app-keep.ts';
import { appLatitudes } from './app-latitudes.ts';
import { appSeason } from './app-season.ts';
import { appSeasonFolds } from './app-season-folds.ts';
import { appSeen } from './app-seen.ts';
import { appTeach } from './app-teach.ts';
import { appWeather } from './app-weather.ts';
import { appWhen } from './app-when.ts';
import { appWhich } from './app-which.ts';
import { appWhy } from './app-why.ts';
import { beds } from './beds.ts';
import { feed } from './feed.ts';
import { jobs } from './jobs.ts';
import { keep } from './keep.ts';
import { lift } from './lift.ts';
import { spacing } from './spacing.ts';
import { watering } from './watering.ts';
import { why } from './why.ts';
import { whyCauses } from './why-causes.ts';
import { whyEvidence } from './why-evidence.ts';
import { whyLooks } from './why-looks.ts';
import { whyQuestions } from './why-questions.ts';
import { whyRescue } from './why-rescue.ts';
import { whySymptoms } from './why-symptoms.ts';

/** What only pages after the first one say: fetched with them. */
export const later = [
  alliums,
  appAbout,
  appFeed,
  appGardenSteps,
  appJobs,
  appKeep,
  appLatitudes,
  appSeason,
  appSeasonFolds,
  appSeen,
  appWeather,
  appWhen,
  appWhich,
  appTeach,
  appWhy,
  beds,
  feed,
  jobs,
  keep,
  lift,
  spacing,
  watering,
  why,
  whyCauses,
  whyEvidence,
  whyLooks,
  whyQuestions,
  whyRescue,
  whySymptoms,
] as const;

/** What an American gardener says otherwise of these. */
export const laterAmerican = [americanLatitudes, americanWhy] as const;
