import { setImmediate } from 'node:timers/promises';
import { handoutLimits } from '@neckfall/answers';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import { handoutAnswer, type RawHandout } from '../answer/handout-answer.ts';
import { handoutBatch } from '../batch/handout-batch.ts';
import { handoutDocument } from '../documents/handout-document.ts';
import { openFrame } from '../frame/frame.ts';
import { addPlaceOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { readSheet } from '../options/handout-options.ts';
import { readPlaceOptions } from '../options/place-options.ts';
import { readersSpeaker, speakerFor } from '../options/speaker-for.ts';
import { jsonText } from '../output/json-text.ts';
import { openSink } from '../output/open-sink.ts';
import { tell } from '../output/tell.ts';
import { writeWhole } from '../print/sheet-files.ts';
import { type SheetForm, sheetForms } from '../print/sheet-forms.ts';
import { refuse } from '../refusal/refusal.ts';

export function addHandout(root: Command, say: Say): void {
  const command = root.command('handout').description(say('help.handout'));
  addPlaceOptions(command, say)
    .option('--heading <text>', say('help.handout.heading', { words: handoutLimits.heading.words }))
    .option('--note <text>', say('help.handout.note', { words: handoutLimits.note.words }))
    .option('--paper <a4|letter>', say('help.handout.paper'))
    .option('--out <file>', say('help.handout.out'))
    .option('--batch <file>', say('help.handout.batch'))
    .option('--as <html|pdf|both>', say('help.handout.as'))
    .option('--json', say('help.json'))
    .option('--units <metric|us>', say('help.units'))
    .option('--debug', say('help.debug'));
  command
    .addHelpText('after', example(say, 'handout Lyon --json'))
    .action((place: string | undefined, raw: RawHandout) =>
      raw.batch === undefined ? handout(place, raw) : handoutBatch(place, raw.batch, raw),
    );
}

/** One sheet for a place, as a file or as a document of what stands on it. */
async function handout(town: string | undefined, raw: RawHandout): Promise<void> {
  const speaker = speakerFor(raw);
  if (raw.as !== undefined) throw refuse('sheet-as-one', { field: '--as' });
  const form = raw.json ? null : formOf(raw.out);
  const options = readPlaceOptions(town, raw);
  const said = readSheet(raw, speaker.units, readersSpeaker(raw), (name) => `--${name}`);
  const { frame, facts, sheet } = handoutAnswer(options, { ...said, label: null }, speaker, openFrame);
  if (form === null) {
    const sink = await openSink(raw.out);
    await sink.write(jsonText(handoutDocument(frame, facts, sheet), 1));
    sink.keep();
  } else await write(form, raw.out ?? '');
  for (const warning of frame.warnings) tell(warning);

  async function write(as: SheetForm, path: string): Promise<void> {
    const { writeSheet } = await import('../print/write-sheet.ts');
    const written = await writeSheet(sheet, [as]);
    if ('missing' in written)
      throw refuse('sheet-letters', { values: { letters: written.missing.slice(0, 12).join(' ') } });
    // lets a Ctrl-C that came meanwhile end us before anything is written
    await setImmediate();
    writeWhole(path, written[0].bytes);
  }
}

function formOf(out: string | undefined): SheetForm {
  if (out === undefined) throw refuse('sheet-no-file', { field: '--out' });
  const form = sheetForms.find((ending) => out.toLowerCase().endsWith(`.${ending}`));
  if (form === undefined) throw refuse('sheet-file-kind', { field: '--out', values: { value: out } });
  return form;
}
