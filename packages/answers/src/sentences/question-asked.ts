import { type CommonQuestion, commonQuestions } from '@neckfall/engine';
import { type Speaker, speaker as speakerOf } from '@neckfall/words';
import { wordsOf } from './why-called.ts';

/** A question as people ask it. */
export function questionAsked(question: CommonQuestion, { say }: Speaker): string {
  return say(`question.ask.${question}`);
}

/** A part of a word tells less than the whole; shorter parts tell nothing. */
const partTells = 0.6;
const leastPart = 4;
/** What matches that much worse than the best is left out. */
const leastOfBest = 0.6;
/** So much of what was typed has to be known for a question to be taken at its word. */
const sureFrom = 0.5;

export type QuestionsMeant = {
  /** The one question that was meant; null: none, or which is not plain. */
  meant: CommonQuestion | null;
  /** Those that come near, the likeliest first. */
  near: readonly CommonQuestion[];
};

/** The question that an id or words of one's own mean, in the speaker's language or in English. */
export function questionsMeant(text: string, speaker: Speaker): QuestionsMeant {
  const typed = text.trim().toLowerCase();
  const named = commonQuestions.find((question) => question === typed);
  if (named) return { meant: named, near: [named] };
  const found = [speaker, speakerOf('metric'), speakerOf('us')].map((voice) => meantBy(text, voice));
  return found.find(({ meant }) => meant !== null) ?? found.find(({ near }) => near.length > 0) ?? found[0];
}

function meantBy(text: string, speaker: Speaker): QuestionsMeant {
  const { say } = speaker;
  const fillers = new Set(wordsOf(say('question.called-filler')));
  const telling = (of: string) => [...new Set(wordsOf(of).filter((word) => !fillers.has(word)))];
  const asked = telling(text);
  if (asked.length === 0) return { meant: null, near: [] };
  const words = commonQuestions.map((question) =>
    telling(`${question} ${questionAsked(question, speaker)} ${say(`question.called.${question}`)}`),
  );
  const phrases = (question: CommonQuestion) =>
    say(`question.called.${question}`)
      .split(',')
      .map((phrase) => telling(phrase).sort().join(' '));
  const whole = [...asked].sort().join(' ');
  const called = commonQuestions.find((question) => phrases(question).includes(whole));
  const holders = (word: string) =>
    words.filter((of) => of.some((own) => own === word || isPart(own, word))).length;
  const scored = commonQuestions
    .map((question, at) => ({ question, ...scoreOf(asked, words[at], holders) }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score);
  const near = scored
    .filter(({ score }) => score >= leastOfBest * scored[0].score)
    .map(({ question }) => question);
  if (called) return { meant: called, near: [called, ...near.filter((one) => one !== called)] };
  const [first, second] = scored;
  const isPlain =
    first !== undefined &&
    first.known >= sureFrom &&
    (second === undefined || second.score <= leastOfBest * first.score);
  return { meant: isPlain ? first.question : null, near };
}

/** How much words tell of a question, rare ones more; and which share of them it knows. */
function scoreOf(
  asked: readonly string[],
  own: readonly string[],
  holders: (word: string) => number,
): { score: number; known: number } {
  let score = 0;
  let known = 0;
  for (const word of asked) {
    const whole = own.includes(word);
    if (!whole && !own.some((of) => isPart(of, word))) continue;
    known++;
    score += (whole ? 1 : partTells) / holders(word);
  }
  return { score, known: known / asked.length };
}

function isPart(a: string, b: string): boolean {
  return Math.min(a.length, b.length) >= leastPart && (a.startsWith(b) || b.startsWith(a));
}
