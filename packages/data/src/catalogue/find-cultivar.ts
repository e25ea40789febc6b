import { foldName } from '../places/index.ts';
import type { Cultivar } from './cultivar.ts';
import { cultivars } from './cultivars.ts';
import { editDistance } from './edit-distance.ts';

/** The onion of a name, or the names nearest to it. */
export type CultivarAnswer = { match: Cultivar } | { match: null; nearest: readonly string[] };

/** Words that packets add to a name. */
const extraWords = /\b(f1|onions?|hybrid)\b/g;

/** The form in which names of onions are compared: no case, accents, punctuation, spaces, nor "F1" and "onion". */
function foldCultivar(text: string): string {
  const plain = foldName(text);
  return (plain.replace(extraWords, ' ').trim() || plain).replaceAll(' ', '');
}

const folded = new WeakMap<Cultivar, readonly string[]>();

function keysOf(cultivar: Cultivar): readonly string[] {
  let keys = folded.get(cultivar);
  if (!keys) {
    keys = [cultivar.name, ...cultivar.aliases].map(foldCultivar);
    folded.set(cultivar, keys);
  }
  return keys;
}

/** The onion of a name or another name of it; else at most three names like it. */
export function findCultivar(text: string, among: readonly Cultivar[] = cultivars): CultivarAnswer {
  const asked = foldCultivar(text);
  const match = among.find((cultivar) => keysOf(cultivar).includes(asked));
  if (match) return { match };
  const limit = Math.max(1, Math.floor(asked.length / 3));
  const rated = among.map((cultivar) => {
    const costs = keysOf(cultivar).map((key) => {
      const isPart = asked.length >= 3 && (key.includes(asked) || (key.length > 3 && asked.includes(key)));
      if (isPart) return 1;
      // no distance is less than the difference in length, and names have been 5000 letters long
      return Math.abs(asked.length - key.length) > limit
        ? Number.POSITIVE_INFINITY
        : editDistance(asked, key);
    });
    return { name: cultivar.name, cost: Math.min(...costs) };
  });
  const near = rated.filter(({ cost }) => cost <= limit).sort((a, b) => a.cost - b.cost);
  return { match: null, nearest: near.slice(0, 3).map(({ name }) => name) };
}

/** Onions with the text in one of their names, in the order of the catalogue. */
export function searchCultivars(text: string, among: readonly Cultivar[] = cultivars): Cultivar[] {
  const asked = foldCultivar(text);
  if (asked === '') return [];
  return among.filter((cultivar) => keysOf(cultivar).some((key) => key.includes(asked)));
}
