import { languages, type Speaker } from '@neckfall/words';
import { Command } from 'commander';
import { addAnswer } from './commands/answer.ts';
import { addAtlas } from './commands/atlas.ts';
import { addCultivars } from './commands/cultivars.ts';
import { addFeed } from './commands/feed.ts';
import { addHandout } from './commands/handout.ts';
import { addJobs } from './commands/jobs.ts';
import { addKeep } from './commands/keep.ts';
import { addRecord } from './commands/record.ts';
import { addSeason } from './commands/season.ts';
import { addWater } from './commands/water.ts';
import { addWeather } from './commands/weather.ts';
import { addWhen } from './commands/when.ts';
import { addWhere } from './commands/where.ts';
import { addWhich } from './commands/which.ts';
import { addWhy } from './commands/why.ts';
import { addCompletion } from './completion/add-completion.ts';
import { example } from './options/example.ts';
import { spareInput } from './output/spare-input.ts';
import { version } from './version.ts';

/** The whole command line; parsing it runs the command. */
export function program(voice: Speaker): Command {
  const { say } = voice;
  const root = new Command('neckfall')
    .description(say('help.program'))
    .version(version, '--version', say('help.version'))
    .option('--about', say('help.about'))
    .option('--debug', say('help.debug'))
    .enablePositionalOptions()
    // a language named before the command is meant for it
    .hook('preAction', (_, command) => {
      const { lang } = command.optsWithGlobals();
      if (lang !== undefined) command.setOptionValue('lang', lang);
    })
    .hook('preAction', (_, command) =>
      spareInput(command.opts(), command.name() === 'weather' ? command.args : []),
    )
    .helpCommand(false);
  // what the option parser says of itself at the head of each list
  const titles = new Map([
    ['Usage:', say('help.title.usage')],
    ['Arguments:', say('help.title.arguments')],
    ['Options:', say('help.title.options')],
    ['Commands:', say('help.title.commands')],
  ]);
  root.configureHelp({ styleTitle: (title) => titles.get(title) ?? title });
  addWhere(root, say);
  addSeason(root, say);
  addWhen(root, say);
  addWhich(root, say);
  addCultivars(root, say);
  addWeather(root, say);
  addWater(root, say);
  addRecord(root, say);
  addFeed(root, voice);
  addJobs(root, say);
  addKeep(root, say);
  addWhy(root, say);
  addAtlas(root, say);
  addHandout(root, say);
  addAnswer(root, say);
  addCompletion(root, voice);
  for (const command of [root, ...root.commands]) {
    command
      .option(`--lang <${languages.join('|')}>`, say('help.lang'))
      .helpOption('-h, --help', say('help.help'))
      .allowExcessArguments(false)
      .showSuggestionAfterError(false)
      .exitOverride();
  }
  return root.addHelpText('after', example(say, 'where Lyon'));
}
