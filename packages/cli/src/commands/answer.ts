import { gardenRanges, storePlaces } from '@neckfall/engine';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer/answer.ts';
import { answersAnswer, questionsAnswer, type RawAnswers, usualPeople } from '../answer/answers-answer.ts';
import { deliver } from '../answer/deliver.ts';
import { batch } from '../batch/batch.ts';
import { openFrame } from '../frame/frame.ts';
import { addBatchOption, addOutputOptions, addPlaceOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { usualStore } from '../options/keep-options.ts';
import { readPlaceOptions } from '../options/place-options.ts';
import { readQuestion } from '../options/question-options.ts';
import { readersSpeaker, speakerFor } from '../options/speaker-for.ts';

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
      return deliver(isPoint ? answers(undefined, place, raw) : answers(place, question, raw), raw);
    });
}

function answers(town: string | undefined, text: string | undefined, raw: RawAnswers): Answer {
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
