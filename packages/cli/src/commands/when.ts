import { plantAssumptions } from '@neckfall/answers';
import { dayNumber, tryStarts, typeForClass } from '@neckfall/engine';
import type { Say } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer.ts';
import { deliver } from '../deliver.ts';
import { yearOf } from '../documents/values.ts';
import { whenRows } from '../documents/when-csv.ts';
import { whenDocument } from '../documents/when-document.ts';
import { openFrame } from '../frame.ts';
import { addOutputOptions, addPlaceOptions, addPlanOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { type RawOutputOptions, type RawPlaceOptions, readPlaceOptions } from '../options/place-options.ts';
import { type RawPlanOptions, readClass, readPractice } from '../options/plan-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { csv } from '../output/csv.ts';
import { whenText } from '../text/when-text.ts';
import { weatherWarnings } from '../weather-notes.ts';

type Raw = RawPlaceOptions & RawOutputOptions & RawPlanOptions;

export function addWhen(root: Command, say: Say): void {
  const command = root.command('when').description(say('help.when'));
  addPlaceOptions(command, say);
  addPlanOptions(command, say, false);
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'when Lyon --class long --start sets'))
    .action((place: string | undefined, raw: Raw) => deliver(when(place, raw), raw));
}

/** The year tried week by week. */
function when(town: string | undefined, raw: Raw): Answer {
  const speaker = speakerFor(raw);
  const options = readPlaceOptions(town, raw);
  const dayLengthClass = readClass(raw, speaker);
  const practice = readPractice(raw, speaker);
  const frame = openFrame(options, speaker);
  const { site, assumed, warnings } = frame;
  const plan = { ...practice, sunHours: options.sunHours, type: typeForClass(site, dayLengthClass) };
  assumed.push(...plantAssumptions(plan, dayLengthClass, speaker));
  const year = yearOf(options.today);
  warnings.push(...weatherWarnings(frame, dayNumber(year, 1, 1), dayNumber(year, 12, 31)));
  const answer = tryStarts(site, plan, year);
  const document = () => whenDocument(frame, answer, year);
  return {
    text: () => whenText(frame, answer),
    json: document,
    csv: () => csv(whenRows(document())),
    warnings,
  };
}
