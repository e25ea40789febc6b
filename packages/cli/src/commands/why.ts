import { mostSymptoms, passedOver, storePlaces } from '@neckfall/engine';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import { deliver } from '../answer/deliver.ts';
import { symptomsAnswer, whyAnswer } from '../answer/why-answer.ts';
import type { RawWhy } from '../answer/why-asked.ts';
import { addOutputOptions, addPlaceOptions, addPlanOptions, another } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { usualStore } from '../options/keep-options.ts';
import { speakerFor } from '../options/speaker-for.ts';

export function addWhy(root: Command, say: Say): void {
  const command = root.command('why').description(say('help.why'));
  addPlaceOptions(command, say);
  command
    .option('--seen <symptoms>', say('help.why.seen', { most: mostSymptoms }), another)
    .option('--list', say('help.why.list'))
    .option('--noticed <when>', say('help.why.noticed'))
    .option('--said <question=answer>', say('help.why.said', { pass: `QUESTION=${passedOver}` }), another);
  addPlanOptions(command, say, false);
  command
    .option('--date <date>', say('help.why.date'))
    .option('--year <year>', say('help.why.year'))
    .option('--about', say('help.why.about'))
    .option('--plant-out <date>', say('help.plant-out'))
    .option('--planting <id>', say('help.planting'))
    .option('--store <where>', say('help.why.store', { usual: usualStore, places: storePlaces.join(', ') }));
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'why Leeds --start sets --date 04-05 --seen flowered'))
    .action(async (target: string | undefined, raw: RawWhy) => {
      const speaker = speakerFor(raw);
      return deliver(raw.list ? symptomsAnswer(speaker) : whyAnswer(target, raw, speaker), raw);
    });
}
