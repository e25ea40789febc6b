import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import { deliverChange } from '../answer/change-garden.ts';
import { recordAnswer } from '../answer/record-answer.ts';
import { addOutputOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import type { RawOutputOptions } from '../options/place-options.ts';
import type { RawRecord } from '../options/record-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { spareFile } from '../output/spare-input.ts';
import { refuse } from '../refusal/refusal.ts';

type Raw = RawRecord & RawOutputOptions;

export function addRecord(root: Command, say: Say): void {
  const command = root
    .command('record')
    .description(say('help.record'))
    .argument('[GARDEN]', say('help.record.garden'))
    .option('--planting <id>', say('help.record.planting'))
    .option('--date <date>', say('help.record.date'))
    .option('--leaves <n>', say('help.record.leaves'))
    .option('--neck <mm>', say('help.record.neck'))
    .option('--bulb <mm>', say('help.record.bulb'))
    .option('--stand <n>', say('help.record.stand'))
    .option('--flowering <n>', say('help.record.flowering'))
    .option('--tops-over <share>', say('help.record.tops-over'))
    .option('--looked-at <n>', say('help.record.looked-at'))
    .option('--watered <litres>', say('help.record.watered'))
    .option('--fed <n-p-k:grams>', say('help.record.fed'))
    .option('--lifted', say('help.record.lifted'))
    .option('--weighed <kg>', say('help.record.weighed'))
    .option('--count <n>', say('help.record.count'))
    .option('--thick-necks <n>', say('help.record.thick-necks'))
    .option('--sound <n>', say('help.record.sound'))
    .option('--sprouted <n>', say('help.record.sprouted'))
    .option('--rotten <n>', say('help.record.rotten'))
    .option('--note <text>', say('help.record.note'))
    .option('--today <date>', say('help.today'));
  addOutputOptions(command, say);
  command
    .addHelpText(
      'after',
      example(say, 'record bank.neckfall.json --planting "The long bed" --leaves 5.5 --looked-at 10'),
    )
    .action(record);
}

async function record(path: string | undefined, raw: Raw): Promise<void> {
  const speaker = speakerFor(raw);
  if (path === undefined || path.trim() === '') throw refuse('no-garden');
  spareFile(raw.out, path, 'GARDEN');
  // numbers are given in the units asked for, whatever the answer is told in
  const given = speakerFor({ ...raw, json: false, csv: false });
  return deliverChange(() => recordAnswer(path, raw, speaker, given), raw);
}
