import { en } from './en/index.ts';
import type { later as laterEnglish } from './en-later/index.ts';
import { american } from './en-us/american.ts';

type Messages = Readonly<Record<string, string>>;

/** Languages besides English: a folder of messages and a line here for each, fetched where it is spoken. */
const folders = {
  es: () => import('./es/index.ts').then(({ es }): readonly Messages[] => es),
};

export type Language = 'en' | keyof typeof folders;
export type Locale = 'en-GB' | 'en-US' | keyof typeof folders;

export const languages: readonly Language[] = ['en', ...(Object.keys(folders) as (keyof typeof folders)[])];

type KeysOf<Part> = Part extends unknown ? keyof Part : never;

export type MessageKey = KeysOf<(typeof en | typeof laterEnglish)[number]>;

/** Files of messages, looked through in turn: what a translation lacks is said in English. */
const known = new Map<Locale, readonly Messages[]>([
  ['en-GB', en],
  ['en-US', [american, ...en]],
]);

/** What has come of English so far. */
const english = () => known.get('en-GB') ?? en;

/** Has to be done before a language is spoken; English is always there. Rejects where its file cannot be had. */
export async function loadLanguage(language: Language): Promise<void> {
  if (language === 'en' || known.has(language)) return;
  const own = await folders[language]();
  known.set(language, [...own, ...english()]);
}

let later: Promise<void> | null = null;

/** English that only pages after the first one say; other languages come whole. Rejects where it cannot be had. */
export function loadLater(): Promise<void> {
  later ??= import('./en-later/index.ts')
    .then((fetched) => {
      for (const [locale, files] of known) {
        const american = locale === 'en-US' ? fetched.laterAmerican : [];
        known.set(locale, [...american, ...files, ...fetched.later]);
      }
    })
    .catch((error) => {
      later = null;
      throw error;
    });
  return later;
}

/** The message of a key; undefined where no file has it. @throws Error where the language was not loaded */
export function findMessage(key: string, locale: Locale): string | undefined {
  const files = known.get(locale);
  if (!files) throw new Error(`the messages of ${locale} are not loaded`);
  return files.find((file) => Object.hasOwn(file, key))?.[key];
}

/** All messages of a language, by themselves, for those who go through them. */
export async function allMessages(language: Language): Promise<Record<string, string>> {
  if (language !== 'en') return Object.assign({}, ...(await folders[language]()));
  await loadLater();
  return Object.assign({}, ...english());
}

/** Only what an American gardener says otherwise, for those who go through it. */
export async function usEnglish(): Promise<Partial<Record<MessageKey, string>>> {
  const { laterAmerican } = await import('./en-later/index.ts');
  return Object.assign({}, ...laterAmerican, american);
}

/** The first of the languages wanted that is spoken here, by tags such as `es-MX` and `es_ES.UTF-8`; else English. */
export function spokenOf(wanted: readonly string[]): Language {
  const codes = wanted.map((tag) => tag.split(/[-_.@]/)[0].toLowerCase());
  for (const code of codes) {
    const spoken = languages.find((language) => language === code);
    if (spoken) return spoken;
  }
  return 'en';
}
