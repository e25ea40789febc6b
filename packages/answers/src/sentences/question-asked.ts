import { type CommonQuestion, commonQuestions } from '@neckfall/engine';
import { type Speaker, speaker as speakerOf } from '@neckfall/words';
import { listOf } from './question-people.ts';
import { wordsOf } from './why-called.ts';

/** A question as people ask it. */
export function questionAsked(question: CommonQuestion, { say }: Speaker): string {
  return say(`question.ask.${question}`);
}

/** A part of a word tells less than the whole; shorter parts tell nothing. */
const partTells = 0.6;
const leastPart = 4;
/** What is longer by more letters is another word. */
const longestEnding = 3;
/** What matches that much worse than the best is left out. */
const leastOfBest = 0.6;
/** So much of what was typed has to be known for a question to be taken at its word, of two words both. */
const sureFrom = 0.5;

/** Commands that answer what people ask beside the ten: what went wrong, which kind, on which days. */
const elsewhere = ['why', 'which', 'when'] as const;
export type Elsewhere = (typeof elsewhere)[number];

export type QuestionsMeant = {
  /** The one question that was meant; null: none, or which is not plain. */
  meant: CommonQuestion | null;
  /** Those that come near, the likeliest first. */
  near: readonly CommonQuestion[];
  /** The command that answers what is none of the ten; null: none, or which is not plain. */
  elsewhere: Elsewhere | null;
};

/** The question that an id or words of one's own mean, in the speaker's language or in English. */
export function questionsMeant(text: string, speaker: Speaker): QuestionsMeant {
  const typed = text.trim().toLowerCase();
  const named = commonQuestions.find((question) => question === typed);
  if (named) return { meant: named, near: [named], elsewhere: null };
  const found = [speaker, speakerOf('metric'), speakerOf('us')].map((voice) => meantBy(text, voice));
  return (
    found.find(({ meant, elsewhere }) => meant !== null || elsewhere !== null) ??
    found.find(({ near }) => near.length > 0) ??
    found[0]
  );
}

/** What may be meant: the words that tell of it, and those that tell of it together. */
type Subject = { of: CommonQuestion | Elsewhere; words: readonly string[]; phrases: readonly string[][] };

function meantBy(text: string, speaker: Speaker): QuestionsMeant {
  const { say } = speaker;
  const fillers = new Set([
    ...wordsOf(say('question.called-filler')),
    // how many people eat tells nothing of what is asked
    ...listOf(say('question.number-words')),
  ]);
  const telling = (of: string) => [
    ...new Set(wordsOf(of).filter((word) => !fillers.has(word) && !/^\d+$/.test(word))),
  ];
  const asked = telling(text);
  const subjectOf = (of: Subject['of'], name: string, called: string): Subject => ({
    of,
    words: telling(`${name} ${called}`),
    phrases: called.split(',').map(telling),
  });
  const subjects = [
    ...commonQuestions.map((question) =>
      subjectOf(
        question,
        `${question} ${questionAsked(question, speaker)}`,
        say(`question.called.${question}`),
      ),
    ),
    ...elsewhere.map((command) => subjectOf(command, '', say(`question.elsewhere.${command}`))),
  ];
  const scored = scoresOf(asked, subjects);
  const best = scored[0]?.score ?? 0;
  const near = scored
    .filter(({ score }) => score >= leastOfBest * best)
    .flatMap(({ of }) => (isElsewhere(of) ? [] : [of]));
  const called = subjects.find(({ phrases }) => phrases.some((phrase) => isSame(phrase, asked)))?.of;
  const meant = called ?? plainest(scored);
  if (meant === null || isElsewhere(meant)) return { meant: null, near, elsewhere: meant };
  return { meant, near: [meant, ...near.filter((one) => one !== meant)], elsewhere: null };
}

type Score = { of: Subject['of']; score: number; knownWords: number; askedWords: number };

function isSure({ knownWords, askedWords }: Score): boolean {
  return knownWords >= Math.min(2, askedWords) && knownWords >= sureFrom * askedWords;
}

function plainest([first, second]: readonly Score[]): Subject['of'] | null {
  if (first === undefined || !isSure(first)) return null;
  return second === undefined || second.score <= leastOfBest * first.score ? first.of : null;
}

/**
 * How much words tell of each subject, rare ones more, and those of a phrase that was typed whole twice; and how many of
 * them it knows. The best first.
 */
function scoresOf(asked: readonly string[], subjects: readonly Subject[]): Score[] {
  const isKnown = (words: readonly string[], word: string) => words.some((own) => tells(own, word) > 0);
  const rarity = new Map(
    asked.map((word) => [word, 1 / subjects.filter(({ words }) => isKnown(words, word)).length]),
  );
  const worth = (words: readonly string[], word: string) =>
    (rarity.get(word) ?? 0) * Math.max(...words.map((own) => tells(own, word)));
  return subjects
    .map(({ of, words, phrases }): Score => {
      const known = asked.filter((word) => isKnown(words, word));
      const inPhrase = phrases
        .filter(
          (phrase) => phrase.length > 1 && phrase.every((own) => asked.some((word) => tells(own, word) > 0)),
        )
        .map((phrase) =>
          asked.filter((word) => isKnown(phrase, word)).reduce((sum, word) => sum + worth(phrase, word), 0),
        );
      const apart = known.reduce((sum, word) => sum + worth(words, word), 0);
      return {
        of,
        score: apart + Math.max(0, ...inPhrase),
        knownWords: known.length,
        askedWords: asked.length,
      };
    })
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score);
}

function isElsewhere(of: Subject['of']): of is Elsewhere {
  return elsewhere.some((command) => command === of);
}

function isSame(a: readonly string[], b: readonly string[]): boolean {
  return a.length > 0 && a.length === b.length && a.every((word) => b.includes(word));
}

/** How much a word that was typed tells of one that is known, 0…1. */
function tells(own: string, word: string): number {
  if (own === word) return 1;
  return isPart(own, word) ? partTells : 0;
}

function isPart(a: string, b: string): boolean {
  return (
    Math.min(a.length, b.length) >= leastPart &&
    Math.abs(a.length - b.length) <= longestEnding &&
    (a.startsWith(b) || b.startsWith(a))
  );
}
