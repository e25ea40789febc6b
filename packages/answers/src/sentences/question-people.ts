import { type Speaker, speaker as speakerOf } from '@neckfall/words';
import { wordsOf } from './why-called.ts';

/** For how many people a question asks, in the speaker's language or in English; null: it does not say. */
export function peopleIn(text: string, speaker: Speaker): number | null {
  for (const voice of [speaker, speakerOf('metric')]) {
    const people = peopleSaid(wordsOf(text), voice);
    if (people > 0) return people;
  }
  return null;
}

/** Adults and children add up. */
function peopleSaid(words: readonly string[], { say }: Speaker): number {
  const numbers = listOf(say('question.number-words'));
  const eaters = listOf(say('question.people.eaters'));
  const before = listOf(say('question.people.before'));
  const lastly = listOf(say('question.people.lastly'));
  let people = 0;
  words.forEach((word, at) => {
    const number = /^\d+$/.test(word) ? Number(word) : 1 + numbers.indexOf(word);
    if (number === 0) return;
    const upTo = words.slice(0, at).join(' ');
    const endsWith = (phrase: string) => upTo === phrase || upTo.endsWith(` ${phrase}`);
    const after = words.slice(at + 1).join(' ');
    const isOfEaters = eaters.some((phrase) => after === phrase || after.startsWith(`${phrase} `));
    const isCount = before.some(endsWith) || (after === '' && lastly.some(endsWith));
    if (isOfEaters || isCount) people += number;
  });
  return people;
}

/** The words of a list with commas, as what people type is read. */
export function listOf(list: string): string[] {
  return list.split(',').map((phrase) => wordsOf(phrase).join(' '));
}
