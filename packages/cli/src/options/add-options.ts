import { gardenRanges } from '@neckfall/engine';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';

/** Options that every answer knows. */
export function addOutputOptions(command: Command, say: Say): Command {
  return command
    .option('--json', say('help.json'))
    .option('--csv', say('help.csv'))
    .option('--out <file>', say('help.out'))
    .option('--units <metric|us>', say('help.units'))
    .option('--debug', say('help.debug'));
}

export function addBatchOption(command: Command, say: Say): Command {
  return command.option('--batch <file>', say('help.batch'));
}

export function addPlaceOptions(command: Command, say: Say): Command {
  return command
    .argument('[place]', say('help.place'))
    .option('--at <lat,lon[,elev]>', say('help.at'))
    .option('--today <date>', say('help.today'))
    .option('--sun <hours>', say('help.sun'))
    .option('--warmer <celsius>', say('help.warmer'))
    .option('--weather <file>', say('help.weather'), another)
    .option('--years <n>', say('help.years'))
    .option('--seed <n>', say('help.seed'));
}

/** An option that may be given again and again. */
export function another(text: string, before: readonly string[] = []): string[] {
  return [...before, text];
}

/** How a crop is grown; `days` adds the dates, which `when` looks for itself. */
export function addPlanOptions(command: Command, say: Say, days: boolean): Command {
  command
    .option('--start <how>', say('help.start'))
    .option('--class <name>', say('help.class'))
    .option('--cultivar <name>', say('help.cultivar'))
    .option('--packet-hours <hours>', say('help.packet-hours', rangeOf('packetHours')))
    .option('--packet-days <days>', say('help.packet-days', rangeOf('packetDays')))
    .option('--garden <file>', say('help.garden'));
  if (days)
    command.option('--date <date>', say('help.date')).option('--plant-out <date>', say('help.plant-out'));
  return addPracticeOptions(command, say);
}

export function addPracticeOptions(command: Command, say: Say): Command {
  return command
    .option('--nursery-temp <celsius>', say('help.nursery-temp'))
    .option('--lamp-hours <hours>', say('help.lamp-hours'))
    .option('--density <n>', say('help.density'))
    .option('--set-size <mm>', say('help.set-size', rangeOf('setSizeMm')))
    .option('--set-store <cold|warm>', say('help.set-store'))
    .option('--cover <none|fleece|tunnel>', say('help.cover'))
    .option('--water <watered|rain>', say('help.water'))
    .option('--soil <texture>', say('help.soil'));
}

function rangeOf(name: keyof typeof gardenRanges) {
  const [min, max] = gardenRanges[name];
  return { min, max };
}
