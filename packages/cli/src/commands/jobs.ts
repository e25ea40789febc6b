import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import { deliverChange } from '../answer/change-garden.ts';
import { jobsAnswer } from '../answer/jobs-answer.ts';
import type { RawTended } from '../answer/tended.ts';
import { addOutputOptions, addPlaceOptions, addPlanOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import type { RawJobsOptions } from '../options/jobs-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { spareFile } from '../output/spare-input.ts';

type Raw = RawTended & RawJobsOptions;

export function addJobs(root: Command, say: Say): void {
  const command = root.command('jobs').description(say('help.jobs'));
  addPlaceOptions(command, say);
  addPlanOptions(command, say, true);
  command
    .option('--planting <id>', say('help.jobs.planting'))
    .option('--from <date>', say('help.jobs.from'))
    .option('--to <date>', say('help.jobs.to'))
    .option('--ics <file>', say('help.jobs.ics'))
    .option('--done <job>', say('help.jobs.done'))
    .option('--leave-out <job>', say('help.jobs.leave-out'))
    .option('--put-off <job:date>', say('help.jobs.put-off'));
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'jobs bank.neckfall.json --ics bank.ics'))
    .action((target: string | undefined, raw: Raw) => jobs(target, raw));
}

/** What to do on crops, when and why. */
async function jobs(target: string | undefined, raw: Raw): Promise<void> {
  const speaker = speakerFor(raw);
  const garden = target?.endsWith('.json') ? target : raw.garden;
  for (const written of ['out', 'ics'] as const) {
    if (garden !== undefined) spareFile(raw[written], garden, 'GARDEN', `--${written}`);
    for (const path of raw.weather ?? []) spareFile(raw[written], path, '--weather', `--${written}`);
  }
  spareFile(raw.ics, raw.out ?? '', '--out', '--ics');
  return deliverChange(() => jobsAnswer(target, raw, speaker), raw);
}
