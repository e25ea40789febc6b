import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer/answer.ts';
import { deliver } from '../answer/deliver.ts';
import { type RawWhere, whereAnswer } from '../answer/where-answer.ts';
import { batch } from '../batch/batch.ts';
import { openFrame } from '../frame/frame.ts';
import { addBatchOption, addOutputOptions, addPlaceOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { readPlaceOptions } from '../options/place-options.ts';
import { speakerFor } from '../options/speaker-for.ts';

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
