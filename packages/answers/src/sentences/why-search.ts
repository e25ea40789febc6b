import { type Symptom, symptoms } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { symptomCalled, wordsOf } from './why-called.ts';

/** Words by which a symptom may be found: rare ones tell more, and those of its own name. */
type Index = {
  fillers: ReadonlySet<string>;
  /** How much each word tells of a symptom. */
  words: ReadonlyMap<Symptom, ReadonlyMap<string, number>>;
};

const known = new Map<Speaker['locale'], Index>();

/** A part of a word tells less than the whole; shorter parts tell nothing. */
const partTells = 0.75;
const leastPart = 3;
const nameTells = 1.3;
/** What matches that much worse than the best is left out. */
const leastOfBest = 0.6;

/** Symptoms that words of one's own may mean, the likeliest first: "never bulbed", "rotted in January". */
export function symptomsLike(text: string, speaker: Speaker): Symptom[] {
  const index = indexOf(speaker);
  const asked = wordsOf(text).filter((word) => !index.fillers.has(word));
  const found = symptoms
    .map((symptom) => ({ symptom, match: matchOf(asked, index.words.get(symptom)!) }))
    .sort((a, b) => b.match - a.match);
  const least = Math.max(found[0].match * leastOfBest, Number.MIN_VALUE);
  const like = found.flatMap(({ symptom, match }) => (match >= least ? [symptom] : []));
  const called = symptomCalled(text, speaker);
  return called === null ? like : [called, ...like.filter((symptom) => symptom !== called)];
}

function matchOf(asked: readonly string[], words: ReadonlyMap<string, number>): number {
  let sum = 0;
  for (const wanted of asked) {
    let most = 0;
    for (const [word, tells] of words) {
      const part = word === wanted ? 1 : isPart(word, wanted) ? partTells : 0;
      most = Math.max(most, part * tells);
    }
    sum += most;
  }
  return sum;
}

function isPart(word: string, wanted: string): boolean {
  const [short, long] = word.length < wanted.length ? [word, wanted] : [wanted, word];
  return short.length >= leastPart && long.startsWith(short);
}

function indexOf({ say, locale }: Speaker): Index {
  const found = known.get(locale);
  if (found) return found;
  const fillers = new Set(wordsOf(say('why.called-filler')));
  const tellingOf = (text: string) => new Set(wordsOf(text).filter((word) => !fillers.has(word)));
  const names = symptoms.map((symptom) => tellingOf(say(`why.symptom.${symptom}`)));
  const all = symptoms.map((symptom, at) => [...names[at], ...tellingOf(say(`why.called.${symptom}`))]);
  const counts = new Map<string, number>();
  for (const of of all) for (const word of new Set(of)) counts.set(word, (counts.get(word) ?? 0) + 1);
  const rarity = (word: string) => Math.log(1 + symptoms.length / (counts.get(word) ?? 1));
  const tells = (word: string, at: number) => rarity(word) * (names[at].has(word) ? nameTells : 1);
  const words = new Map(
    symptoms.map((symptom, at) => [symptom, new Map(all[at].map((word) => [word, tells(word, at)]))]),
  );
  const index = { fillers, words };
  known.set(locale, index);
  return index;
}
