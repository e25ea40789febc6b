import { gardenRanges, organicFeeds } from '@neckfall/engine';
import type { Say, Speaker } from '@neckfall/words';
import type { Command } from 'commander';
import { deliver } from '../answer/deliver.ts';
import { feedAnswer, type RawFeed } from '../answer/feed-answer.ts';
import { addOutputOptions, addPlaceOptions, addPlanOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { aimRange } from '../options/feed-options.ts';
import { speakerFor } from '../options/speaker-for.ts';

export function addFeed(root: Command, { say, any }: Speaker): void {
  const command = root.command('feed').description(say('help.feed'));
  addPlaceOptions(command, say);
  addPlanOptions(command, say, true);
  tellOfSoil(command, say);
  command
    .option('--planting <id>', say('help.planting'))
    .option('--product <name>', say('help.feed.product', { organic: any(organicFeeds) }))
    .option('--aim <kg-per-m2>', say('help.feed.aim', ends(aimRange)))
    .option('--bed-m2 <m2>', say('help.feed.bed-m2'))
    .option('--compost <kg-per-m2>', say('help.feed.compost', ends(gardenRanges.compostKgPerM2)))
    .option('--after-legume', say('help.feed.after-legume'))
    .option('--ph <ph>', say('help.feed.ph', ends(gardenRanges.soilPh)));
  addOutputOptions(command, say);
  command
    .addHelpText(
      'after',
      example(say, 'feed Lyon --class long --start sets --date 03-20 --product 10-10-10 --bed-m2 4'),
    )
    .action(async (place: string | undefined, raw: RawFeed) => {
      await deliver(feedAnswer(place, raw, speakerFor(raw)), raw);
    });
}

/** Here `--soil` takes what the soil gives as well as its texture. */
function tellOfSoil(command: Command, say: Say): void {
  for (const option of command.options)
    if (option.long === '--soil') option.description = say('help.feed.soil');
}

function ends([min, max]: readonly [number, number]) {
  return { min, max };
}
