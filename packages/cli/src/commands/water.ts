import { efficiencyOf, gardenRanges, wateringWays } from '@neckfall/engine';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import { deliver } from '../answer/deliver.ts';
import type { RawTended } from '../answer/tended.ts';
import { waterAnswer } from '../answer/water-answer.ts';
import { addOutputOptions, addPlaceOptions, addPlanOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { efficiencies, type RawWaterOptions } from '../options/water-options.ts';

export function addWater(root: Command, say: Say): void {
  const command = root.command('water').description(say('help.watering'));
  const between = ([min, max]: readonly [number, number]) => ({ min, max });
  addPlaceOptions(command, say);
  addPlanOptions(command, say, true);
  command
    .option('--planting <id>', say('help.planting'))
    .option('--bed-m2 <m2>', say('help.watering.bed-m2'))
    .option(`--watering <${wateringWays.join('|')}>`, say('help.watering.watering'))
    .option('--flow <litres-per-hour>', say('help.watering.flow'))
    .option(
      '--efficiency <share>',
      say('help.watering.efficiency', {
        ...between(efficiencies),
        above: efficiencyOf.can,
        drip: efficiencyOf.drip,
      }),
    )
    .option('--salt <ds-per-m>', say('help.watering.salt', between(gardenRanges.waterSaltDsPerM)))
    .option('--days', say('help.days'));
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'water Lyon --class long --start direct-seed --date 03-25 --bed-m2 3'))
    .action(async (target: string | undefined, raw: RawTended & RawWaterOptions) => {
      return deliver(waterAnswer(target, raw), raw);
    });
}
