import { gardenRanges, likes, seedAges, storePlaces } from '@neckfall/engine';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import { deliver } from '../answer/deliver.ts';
import { keepAnswer } from '../answer/keep-answer.ts';
import type { RawKeep } from '../answer/keep-asked.ts';
import { addOutputOptions, addPlaceOptions, addPracticeOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { usualStore } from '../options/keep-options.ts';
import { speakerFor } from '../options/speaker-for.ts';

export function addKeep(root: Command, say: Say): void {
  const command = root.command('keep').description(say('help.keep'));
  const between = ([min, max]: readonly [number, number]) => ({ min, max });
  addPlaceOptions(command, say);
  command
    .option('--people <n>', say('help.keep.people', between(gardenRanges.people)))
    .option('--grams-per-week <g>', say('help.keep.grams'))
    .option('--store <where>', say('help.keep.store', { usual: usualStore, places: storePlaces.join(', ') }))
    .option('--like <words>', say('help.keep.like', { likes: likes.join(', ') }))
    .option(`--seed-age <${seedAges.join('|')}>`, say('help.keep.seed-age'))
    .option('--place <id>', say('help.keep.place'))
    .option('--planting <id>', say('help.keep.planting'))
    .option('--garden <file>', say('help.garden'));
  addPracticeOptions(command, say);
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'keep Leeds --people 4 --store shed'))
    .action(async (target: string | undefined, raw: RawKeep) => {
      return deliver(keepAnswer(target, raw, speakerFor(raw)), raw);
    });
}
