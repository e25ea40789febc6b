import { about } from './en/about.ts';
import { app } from './en/app.ts';
import { appAbout } from './en/app-about.ts';
import { appGarden } from './en/app-garden.ts';
import { appSeason } from './en/app-season.ts';
import { appWhen } from './en/app-when.ts';
import { appWhere } from './en/app-where.ts';
import { appWhich } from './en/app-which.ts';
import { batch } from './en/batch.ts';
import { catalogue } from './en/catalogue.ts';
import { completion } from './en/completion.ts';
import { countries } from './en/countries.ts';
import { dates } from './en/dates.ts';
import { demo } from './en/demo.ts';
import { errors } from './en/errors.ts';
import { help } from './en/help.ts';
import { howWeKnow } from './en/how-we-know.ts';
import { numbers } from './en/numbers.ts';
import { packet } from './en/packet.ts';
import { pictures } from './en/pictures.ts';
import { reasons } from './en/reasons.ts';
import { season } from './en/season.ts';
import { terms } from './en/terms.ts';
import { when } from './en/when.ts';
import { where } from './en/where.ts';
import { which } from './en/which.ts';
import { wordList } from './en/word-list.ts';
import { american } from './en-us/american.ts';

export const english = {
  ...about,
  ...app,
  ...appAbout,
  ...appGarden,
  ...appSeason,
  ...appWhen,
  ...appWhere,
  ...appWhich,
  ...batch,
  ...catalogue,
  ...completion,
  ...countries,
  ...dates,
  ...demo,
  ...errors,
  ...help,
  ...howWeKnow,
  ...packet,
  ...pictures,
  ...numbers,
  ...reasons,
  ...season,
  ...terms,
  ...when,
  ...where,
  ...which,
  ...wordList,
} as const;

export type MessageKey = keyof typeof english;

/** Only what an American gardener says otherwise. */
export const usEnglish: Partial<Record<MessageKey, string>> = american;
