import { app } from './app.ts';
import { appGarden } from './app-garden.ts';
import { appWhere } from './app-where.ts';
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
import { howWeKnow } from './how-we-know.ts';
import { packet } from './packet.ts';
import { pictures } from './pictures.ts';
import { reasons } from './reasons.ts';
import { season } from './season.ts';
import { terms } from './terms.ts';
import { when } from './when.ts';
import { where } from './where.ts';
import { which } from './which.ts';
import { wordList } from './word-list.ts';

/** Kept apart, as putting a thousand messages into one object takes a phone longer than any sentence is worth. */
export const en = [
  app,
  appGarden,
  appWhere,
  answersCommand,
  ask,
  batch,
  completion,
  dates,
  demo,
  errors,
  feedOptions,
  handoutCommand,
  help,
  howWeKnow,
  jobsCommand,
  keepCommand,
  mapCommand,
  packet,
  pictures,
  planting,
  reasons,
  record,
  season,
  terms,
  wateringHelp,
  weather,
  weatherFiles,
  when,
  where,
  which,
  whyCommand,
  wordList,
] as const;
