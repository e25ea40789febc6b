import { IntlMessageFormat } from 'intl-messageformat';
import { english, type MessageKey, usEnglish } from './messages.ts';

export type Locale = 'en-GB' | 'en-US';
export type MessageValues = Record<string, string | number | boolean>;

/** Says a message of the message files with its values filled in. */
export type Say = (key: MessageKey, values?: MessageValues) => string;

const shared = new Map<Locale, Say>();

/** The voice of a locale. Throws on a key that no message file has and on a value that a message needs and lacks. */
export function sayer(locale: Locale): Say {
  const known = shared.get(locale);
  if (known) return known;
  const formats = new Map<MessageKey, IntlMessageFormat>();
  const say: Say = (key, values) => {
    let format = formats.get(key);
    if (!format) {
      const pattern = (locale === 'en-US' ? usEnglish[key] : undefined) ?? english[key];
      if (pattern === undefined) throw new Error(`no message ${key}`);
      format = new IntlMessageFormat(pattern, locale);
      formats.set(key, format);
    }
    return String(format.format(values)).trimEnd();
  };
  shared.set(locale, say);
  return say;
}
