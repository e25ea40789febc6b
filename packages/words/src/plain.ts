/** A message without grammar, cut at its values: text, name of a value, text, name, …, text. */
export type PlainMessage = readonly string[];

const name = /^\w+$/;
/** Marks that the message format reads as quoting. */
const quoting = /''|'[{}]/;

/**
 * Cuts a message whose values are put in as they are, which most are; null where it has plurals, choices, numbers
 * to be formatted or quotes. Reading those in full takes a phone a hundred times as long.
 */
export function readPlain(pattern: string): PlainMessage | null {
  if (quoting.test(pattern) || pattern.includes('<')) return null;
  const [start, ...pieces] = pattern.split('{');
  const parts = [start];
  for (const piece of pieces) {
    const [value, text, ...more] = piece.split('}');
    if (text === undefined || more.length > 0 || !name.test(value)) return null;
    parts.push(value, text);
  }
  return start.includes('}') ? null : parts;
}

/** @throws Error naming a value that the message needs and lacks */
export function fillPlain(
  message: PlainMessage,
  values: Readonly<Record<string, string | number | boolean>> | undefined,
): string {
  if (message.length === 1) return message[0];
  let text = message[0];
  for (let at = 1; at < message.length; at += 2) {
    const value = values?.[message[at]];
    if (value === undefined) throw new Error(`expected a value for {${message[at]}}, got none`);
    text += String(value) + message[at + 1];
  }
  return text;
}
