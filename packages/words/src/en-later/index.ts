import { about } from './about.ts';
import { alliums } from './alliums.ts';
import { americanAtlas } from './american-atlas.ts';
import { americanHandout } from './american-handout.ts';
import { americanQuestions } from './american-questions.ts';
import { americanTogether } from './american-together.ts';
import { americanWhy } from './american-why.ts';
import { appAbout } from './app-about.ts';
import { appAtlas } from './app-atlas.ts';
import { appFeed } from './app-feed.ts';
import { appGardenSteps } from './app-garden-steps.ts';
import { appJobs } from './app-jobs.ts';
import { appKeep } from './app-keep.ts';
import { appQuestions } from './app-questions.ts';
import { appSeason } from './app-season.ts';
import { appSeasonFolds } from './app-season-folds.ts';
import { appSeen } from './app-seen.ts';
import { appSheet } from './app-sheet.ts';
import { appTeach } from './app-teach.ts';
import { appTogether } from './app-together.ts';
import { appWeather } from './app-weather.ts';
import { appWhen } from './app-when.ts';
import { appWhich } from './app-which.ts';
import { appWhy } from './app-why.ts';
import { atlas } from './atlas.ts';
import { beds } from './beds.ts';
import { catalogue } from './catalogue.ts';
import { feed } from './feed.ts';
import { handout } from './handout.ts';
import { jobs } from './jobs.ts';
import { keep } from './keep.ts';
import { learnt } from './learnt.ts';
import { lift } from './lift.ts';
import { odd } from './odd.ts';
import { questions } from './questions.ts';
import { questionsTold } from './questions-told.ts';
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
  about,
  alliums,
  appAbout,
  appAtlas,
  appFeed,
  appGardenSteps,
  appJobs,
  appKeep,
  appQuestions,
  appSeason,
  appSeasonFolds,
  appSeen,
  appSheet,
  appWeather,
  appWhen,
  appWhich,
  appTeach,
  appTogether,
  appWhy,
  atlas,
  beds,
  catalogue,
  feed,
  handout,
  jobs,
  keep,
  learnt,
  lift,
  odd,
  questions,
  questionsTold,
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
export const laterAmerican = [
  americanAtlas,
  americanHandout,
  americanQuestions,
  americanTogether,
  americanWhy,
] as const;
