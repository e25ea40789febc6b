import { type MessageValues, readMessage } from './message.ts';
import { findMessage, type Locale, type MessageKey } from './messages.ts';
import { shown } from './shown.ts';

/** Says a message of the message files with its values filled in, on one line ({@link shown}). */
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
    return way(values && inSight(values)).trimEnd();
  };
  shared.set(locale, say);
  return say;
}

/** Names and other words of the reader's own, so that a sentence shows all of them. */
function inSight(values: MessageValues): MessageValues {
  const seen: MessageValues = {};
  for (const [name, value] of Object.entries(values))
    seen[name] = typeof value === 'string' ? shown(value) : value;
  return seen;
}

function wayToSay(key: MessageKey, locale: Locale): (values?: MessageValues) => string {
  const pattern = findMessage(key, locale);
  if (pattern === undefined) throw new Error(`no message ${key}`);
  return readMessage(pattern, locale);
}
