import { type MessageValues, readMessage } from './message.ts';
import { findMessage, type Locale, type MessageKey } from './messages.ts';

/** Says a message of the message files with its values filled in. */
export type Say = (key: MessageKey, values?: MessageValues) => string;

const shared = new Map<Locale, Say>();

/** The voice of a locale. Throws on a key that no message file has and on a value that a message needs and lacks. */
export function sayer(locale: Locale): Say {
  const known = shared.get(locale);
  if (known) return known;
  const ways = new Map<MessageKey, (values?: MessageValues) => string>();
  const say: Say = (key, values) => {
    let way = ways.get(key);
    if (!way) {
      way = wayToSay(key, locale);
      ways.set(key, way);
    }
    return way(values).trimEnd();
  };
  shared.set(locale, say);
  return say;
}

function wayToSay(key: MessageKey, locale: Locale): (values?: MessageValues) => string {
  const pattern = findMessage(key, locale);
  if (pattern === undefined) throw new Error(`no message ${key}`);
  return readMessage(pattern, locale);
}
