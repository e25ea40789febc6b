import { gardenRanges, storePlaces } from '@neckfall/engine';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import { answersAnswer, questionsAnswer, type RawAnswers, usualPeople } from '../answer/answers-answer.ts';
import { deliver, hand } from '../answer/deliver.ts';
import { drawQuestion } from '../answer/draw-question.ts';
import { pictureFile } from '../answer/picture-answer.ts';
import { batch } from '../batch/batch.ts';
import { openFrame } from '../frame/frame.ts';
import { addBatchOption, addOutputOptions, addPlaceOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { usualStore } from '../options/keep-options.ts';
import { pictureEnding } from '../options/picture-options.ts';
import { readPlaceOptions } from '../options/place-options.ts';
import { readQuestion } from '../options/question-options.ts';
import { readersSpeaker, speakerFor } from '../options/speaker-for.ts';
import { refuse } from '../refusal/refusal.ts';

export function addAnswer(root: Command, say: Say): void {
  const command = root.command('answer').description(say('help.answer'));
  addPlaceOptions(command, say);
  const [min, max] = gardenRanges.people;
  command
    .argument('[question]', say('help.answer.question'))
    .option('--list', say('help.answer.list'))
    .option('--people <n>', say('help.answer.people', { usual: usualPeople, min, max }))
    .option('--store <where>', say('help.keep.store', { usual: usualStore, places: storePlaces.join(', ') }));
  addBatchOption(command, say);
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'answer Nairobi never-bulbed'))
    .action(async (place: string | undefined, question: string | undefined, raw: RawAnswers) => {
      if (raw.list) return deliver(questionsAnswer(speakerFor(raw)), raw);
      if (raw.batch !== undefined) return batch('answer', place, raw.batch, raw);
      // with a point the only word is the question
      const isPoint = raw.at !== undefined && question === undefined;
      const [town, text] = isPoint ? [undefined, place] : [place, question];
      const form = raw.json || raw.csv ? null : pictureEnding(raw.out);
      if (form !== null && text === undefined) throw pictureOfOne(raw.out!);
      const answer = answers(town, text, raw);
      if (form === null) return deliver(answer, raw);
      return hand(await pictureFile(drawQuestion(answer.told), form), answer.warnings, raw.out);
    });
}

/** Ten questions are no one picture. */
function pictureOfOne(value: string) {
  return refuse('picture-of-one', { field: '--out', values: { value } });
}

function answers(town: string | undefined, text: string | undefined, raw: RawAnswers) {
  const read = text === undefined ? null : readQuestion(text, readersSpeaker(raw));
  // an option goes before what the question says
  const asked = read?.people && raw.people === undefined ? { ...raw, people: String(read.people) } : raw;
  return answersAnswer(
    readPlaceOptions(town, raw),
    read?.question ?? null,
    asked,
    speakerFor(raw),
    openFrame,
  );
}
