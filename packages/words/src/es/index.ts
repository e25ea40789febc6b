import { about } from './about.ts';
import { alliums } from './alliums.ts';
import { app } from './app.ts';
import { appAbout } from './app-about.ts';
import { appAtlas } from './app-atlas.ts';
import { appFeed } from './app-feed.ts';
import { appGarden } from './app-garden.ts';
import { appJobs } from './app-jobs.ts';
import { appKeep } from './app-keep.ts';
import { appQuestions } from './app-questions.ts';
import { appSeason } from './app-season.ts';
import { appSeen } from './app-seen.ts';
import { appSheet } from './app-sheet.ts';
import { appTeach } from './app-teach.ts';
import { appTogether } from './app-together.ts';
import { appWeather } from './app-weather.ts';
import { appWhen } from './app-when.ts';
import { appWhere } from './app-where.ts';
import { appWhich } from './app-which.ts';
import { appWhy } from './app-why.ts';
import { atlas } from './atlas.ts';
import { beds } from './beds.ts';
import { catalogue } from './catalogue.ts';
import { answersCommand } from './command-line/answers.ts';
import { ask } from './command-line/ask.ts';
import { batch } from './command-line/batch.ts';
import { completion } from './command-line/completion.ts';
import { demo } from './command-line/demo.ts';
import { errors } from './command-line/errors.ts';
import { feedOptions } from './command-line/feed.ts';
import { handoutCommand } from './command-line/handout.ts';
import { help } from './command-line/help.ts';
import { jobsCommand } from './command-line/jobs.ts';
import { keepCommand } from './command-line/keep.ts';
import { mapCommand } from './command-line/map.ts';
import { planting } from './command-line/planting.ts';
import { record } from './command-line/record.ts';
import { wateringHelp } from './command-line/watering-help.ts';
import { weather } from './command-line/weather.ts';
import { weatherFiles } from './command-line/weather-files.ts';
import { whyCommand } from './command-line/why.ts';
import { dates } from './dates.ts';
import { feed } from './feed.ts';
import { handout } from './handout.ts';
import { howWeKnow } from './how-we-know.ts';
import { jobs } from './jobs.ts';
import { keep } from './keep.ts';
import { learnt } from './learnt.ts';
import { lift } from './lift.ts';
import { odd } from './odd.ts';
import { packet } from './packet.ts';
import { pictures } from './pictures.ts';
import { questions } from './questions.ts';
import { questionsTold } from './questions-told.ts';
import { reasons } from './reasons.ts';
import { season } from './season.ts';
import { spacing } from './spacing.ts';
import { terms } from './terms.ts';
import { watering } from './watering.ts';
import { when } from './when.ts';
import { where } from './where.ts';
import { which } from './which.ts';
import { why } from './why.ts';
import { whyCauses } from './why-causes.ts';
import { whyEvidence } from './why-evidence.ts';
import { whyLooks } from './why-looks.ts';
import { whyQuestions } from './why-questions.ts';
import { whyRescue } from './why-rescue.ts';
import { whySymptoms } from './why-symptoms.ts';
import { wordList } from './word-list.ts';

export const es = [
  about,
  alliums,
  app,
  appAbout,
  appAtlas,
  appFeed,
  appGarden,
  appJobs,
  appKeep,
  appQuestions,
  appSeason,
  appSeen,
  appSheet,
  appWeather,
  appWhen,
  appWhere,
  appWhich,
  appTeach,
  appTogether,
  appWhy,
  answersCommand,
  ask,
  batch,
  atlas,
  beds,
  catalogue,
  completion,
  dates,
  demo,
  errors,
  feed,
  handout,
  feedOptions,
  handoutCommand,
  help,
  howWeKnow,
  jobsCommand,
  keepCommand,
  mapCommand,
  jobs,
  keep,
  odd,
  learnt,
  lift,
  packet,
  pictures,
  planting,
  questions,
  questionsTold,
  reasons,
  record,
  season,
  spacing,
  terms,
  watering,
  wateringHelp,
  weather,
  weatherFiles,
  when,
  where,
  which,
  why,
  whyCauses,
  whyCommand,
  whyEvidence,
  whyLooks,
  whyQuestions,
  whyRescue,
  whySymptoms,
  wordList,
] as const;
