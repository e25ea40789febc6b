import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer/answer.ts';
import { deliver } from '../answer/deliver.ts';
import { plantingAnswer } from '../answer/planting-answer.ts';
import { type RawSeason, seasonAnswer } from '../answer/season-answer.ts';
import { batch } from '../batch/batch.ts';
import { openFrame } from '../frame/frame.ts';
import { addBatchOption, addOutputOptions, addPlaceOptions, addPlanOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { readPlaceOptions } from '../options/place-options.ts';
import { type RawPlantingOption, refuseGarden } from '../options/planting-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { refuse } from '../refusal/refusal.ts';

export function addSeason(root: Command, say: Say): void {
  const command = root.command('season').description(say('help.season'));
  addPlaceOptions(command, say);
  addPlanOptions(command, say, true);
  command.option('--planting <id>', say('help.planting')).option('--days', say('help.days'));
  addBatchOption(command, say);
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'season Lyon --class long --start direct-seed --date 03-25'))
    .action(async (place: string | undefined, raw: RawSeason & RawPlantingOption) => {
      if (raw.batch !== undefined) return batch('season', place, raw.batch, raw);
      return deliver(season(place, raw), raw);
    });
}

/** What one crop will do, over many years of weather. */
function season(town: string | undefined, raw: RawSeason & RawPlantingOption): Answer {
  const speaker = speakerFor(raw);
  if (raw.csv && !raw.days) throw refuse('no-table', { field: '--csv', expected: '--days' });
  if (raw.planting !== undefined) return plantingAnswer(town, raw, speaker);
  refuseGarden(town);
  return seasonAnswer(readPlaceOptions(town, raw), raw, speaker, openFrame);
}
