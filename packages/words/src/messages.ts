import { about } from './en/about.ts';
import { app } from './en/app.ts';
import { appAbout } from './en/app-about.ts';
import { appGarden } from './en/app-garden.ts';
import { appSeason } from './en/app-season.ts';
import { appWhen } from './en/app-when.ts';
import { appWhere } from './en/app-where.ts';
import { appWhich } from './en/app-which.ts';
import { catalogue } from './en/catalogue.ts';
import { batch } from './en/command-line/batch.ts';
import { completion } from './en/command-line/completion.ts';
import { demo } from './en/command-line/demo.ts';
import { errors } from './en/command-line/errors.ts';
import { help } from './en/command-line/help.ts';
import { dates } from './en/dates.ts';
import { howWeKnow } from './en/how-we-know.ts';
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

/** Kept apart, as putting a thousand messages into one object takes a phone longer than any sentence is worth. */
const parts = [
  about,
  app,
  appAbout,
  appGarden,
  appSeason,
  appWhen,
  appWhere,
  appWhich,
  batch,
  catalogue,
  completion,
  dates,
  demo,
  errors,
  help,
  howWeKnow,
  packet,
  pictures,
  reasons,
  season,
  terms,
  when,
  where,
  which,
  wordList,
] as const;

type KeysOf<Part> = Part extends unknown ? keyof Part : never;

export type MessageKey = KeysOf<(typeof parts)[number]>;

/** The message of a key as the British have it; undefined where no file has it. */
export function findMessage(key: string): string | undefined {
  const part: Readonly<Record<string, string>> | undefined = parts.find((part) => Object.hasOwn(part, key));
  return part?.[key];
}

/** All messages, for those who go through them. */
export function allMessages(): Record<MessageKey, string> {
  return Object.assign({}, ...parts);
}

/** Only what an American gardener says otherwise. */
export const usEnglish: Partial<Record<MessageKey, string>> = american;
