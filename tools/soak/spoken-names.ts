import { findCultivar, searchCultivars } from '@neckfall/data';
import { allMessages, type MessageKey, type MessageValues, shown, speaker } from '@neckfall/words';
import fc from 'fast-check';
import { hostileText } from '../../packages/cli/test/fuzz/hostile.ts';
import { attack } from './attack.ts';

/** What each message wants: words, numbers, or one of a choice of words. */
type Place = { name: string; takes: 'word' | 'number' | 'choice' };

const messages = Object.entries(await allMessages('en')).map(([key, pattern]) => ({
  key: key as MessageKey,
  places: placesOf(pattern),
}));
const voice = speaker('metric');

/** Each name once: a message that counts by a value in one place may show it as it is in another. */
function placesOf(pattern: string): Place[] {
  const found = [...pattern.matchAll(/\{\s*(\w+)\s*(?:,\s*(\w+))?/g)];
  const kinds = new Map<string, Place['takes']>();
  for (const [, name, kind] of found) {
    if (kind !== undefined) kinds.set(name, kind === 'select' ? 'choice' : 'number');
    else if (!kinds.has(name)) kinds.set(name, 'word');
  }
  return [...kinds].map(([name, takes]) => ({ name, takes }));
}

const inherited = fc.constantFrom(
  'constructor',
  '__proto__',
  'toString',
  'valueOf',
  'hasOwnProperty',
  'none',
  'other',
);
const words = fc.oneof(inherited, hostileText);

const asked = fc.constantFrom(...messages).chain(({ key, places }) =>
  fc.tuple(...places.map(() => words)).map((texts) => ({
    key,
    places,
    texts,
    values: Object.fromEntries(
      places.map(({ name, takes }, at) => [name, takes === 'number' ? texts[at].length : texts[at]]),
    ) as MessageValues,
  })),
);

export const ofNames = attack(
  'names of onions and places in sentences: inherited names, controls, lone surrogates',
  10,
  asked,
  ({ key, values, texts }) => {
    const said = voice.say(key, values);
    const bare = texts.reduce(
      (rest, text) => (text === '' ? rest : rest.replaceAll(shown(text).trimEnd(), '')),
      said,
    );
    if (/\[object|native code|\bundefined\b|\bNaN\b/.test(bare)) return `${key} says ${said}`;
    const name = texts[0] ?? '';
    const answer = findCultivar(name);
    if (!answer.match && answer.nearest.length > 3) return `too many names like ${name}`;
    return searchCultivars(name).every((found) => found.name !== '') ? null : `a nameless onion for ${name}`;
  },
);
