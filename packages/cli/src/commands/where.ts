import { districtAssumption, placeFacts, sizesAssumption, todaySentence } from '@neckfall/answers';
import { surveyPlace } from '@neckfall/engine';
import type { Say, Speaker } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer.ts';
import { batch } from '../batch/batch.ts';
import { deliver } from '../deliver.ts';
import { whereDocument } from '../documents/where-document.ts';
import { type OpenFrame, openFrame } from '../frame.ts';
import { addBatchOption, addOutputOptions, addPlaceOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import {
  type PlaceOptions,
  type RawBatchOption,
  type RawOutputOptions,
  type RawPlaceOptions,
  readPlaceOptions,
} from '../options/place-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { csv } from '../output/csv.ts';
import { whereText } from '../text/where-text.ts';
import { weatherWarnings } from '../weather-notes.ts';

export type RawWhere = RawPlaceOptions & RawOutputOptions & RawBatchOption;

export function addWhere(root: Command, say: Say): void {
  const command = root.command('where').description(say('help.where'));
  addPlaceOptions(command, say);
  addBatchOption(command, say);
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'where "Springfield, US" --units us'))
    .action((place: string | undefined, raw: RawWhere) =>
      raw.batch === undefined ? deliver(where(place, raw), raw) : batch('where', place, raw.batch, raw),
    );
}

/** Which onion to buy at a place, when to start it, and what is still in time today. */
function where(town: string | undefined, raw: RawWhere): Answer {
  return whereAnswer(readPlaceOptions(town, raw), speakerFor(raw), openFrame);
}

export function whereAnswer(options: PlaceOptions, speaker: Speaker, open: OpenFrame): Answer {
  const frame = open(options, speaker);
  const { sunHours, today } = frame.options;
  const facts = placeFacts(frame.site, today);
  frame.warnings.push(...weatherWarnings(frame, today, today + 364));
  const answer = surveyPlace(frame.site, today, { sunHours });
  frame.assumed.push(
    ...districtAssumption(frame.site.practice, speaker),
    sizesAssumption(answer.classes[0].summary.plan.water, speaker),
  );
  const sentence = todaySentence(answer, today, frame.speaker);
  const document = () => whereDocument(frame, facts, answer, sentence);
  return {
    text: () => whereText(frame, facts, answer, sentence),
    json: document,
    csv: () => csv(document().climate.months),
    warnings: frame.warnings,
  };
}
