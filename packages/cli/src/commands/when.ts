import { autumnAssumption, districtAssumption, practiceAssumptions } from '@neckfall/answers';
import { beliefSite, tryStarts, waysOf } from '@neckfall/engine';
import type { Say, Speaker } from '@neckfall/words';
import type { Command } from 'commander';
import type { Answer } from '../answer/answer.ts';
import { deliver } from '../answer/deliver.ts';
import { openPlanting } from '../answer/planting-answer.ts';
import { yearOf } from '../documents/values.ts';
import { whenRows } from '../documents/when-csv.ts';
import { whenDocument } from '../documents/when-document.ts';
import { type Frame, openFrame } from '../frame/frame.ts';
import { weatherWarnings } from '../frame/weather-notes.ts';
import { addOutputOptions, addPlaceOptions, addPlanOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { type AskedOnion, readOnion } from '../options/onion-options.ts';
import { type RawOutputOptions, type RawPlaceOptions, readPlaceOptions } from '../options/place-options.ts';
import { type Practice, type RawPlanOptions, readPractice } from '../options/plan-options.ts';
import { type RawPlantingOption, refuseGarden } from '../options/planting-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { csv } from '../output/csv.ts';
import { whenText } from '../text/when-text.ts';

type Raw = RawPlaceOptions & RawOutputOptions & RawPlanOptions & RawPlantingOption;

export function addWhen(root: Command, say: Say): void {
  const command = root.command('when').description(say('help.when'));
  addPlaceOptions(command, say);
  addPlanOptions(command, say, false);
  command.option('--planting <id>', say('help.planting'));
  addOutputOptions(command, say);
  command
    .addHelpText('after', example(say, 'when Lyon --class long --start sets'))
    .action(async (place: string | undefined, raw: Raw) => {
      return deliver(when(place, raw), raw);
    });
}

/** The year tried week by week. */
function when(town: string | undefined, raw: Raw): Answer {
  const speaker = speakerFor(raw);
  const { onion, practice, frame } =
    raw.planting === undefined ? ofPlace(town, raw, speaker) : ofPlanting(town, raw, speaker);
  const { site, assumed, warnings, options } = frame;
  const year = yearOf(options.today);
  const { type, traits, assumed: onionAssumed } = onion.plantAt(site, year);
  const plan = { ...practice, sunHours: options.sunHours, type, traits };
  assumed.push(
    ...onionAssumed,
    ...districtAssumption(site.practice, speaker),
    ...practiceAssumptions(plan, speaker, true),
  );
  warnings.push(...onion.warnings);
  warnings.push(...weatherWarnings(frame, options.today, options.today + 364));
  const ways = waysOf(site, onion.cropIn(year), [plan.start]);
  if (ways.length > 1) assumed.push(autumnAssumption(ways[1].type, speaker));
  const growing = { ...practice, sunHours: options.sunHours };
  const answer = tryStarts(site, ways, growing, options.today);
  const document = () => whenDocument(frame, answer, onion.name, year);
  return {
    text: () => whenText(frame, answer, onion.name),
    json: document,
    csv: () => csv(whenRows(document())),
    warnings,
  };
}

type Asked = { onion: AskedOnion; practice: Practice; frame: Frame };

function ofPlace(town: string | undefined, raw: Raw, speaker: Speaker): Asked {
  refuseGarden(town);
  const options = readPlaceOptions(town, raw);
  const onion = readOnion(raw, speaker);
  const practice = readPractice(raw, speaker);
  return { onion, practice, frame: openFrame(options, speaker) };
}

/** Another start of a planting's onion at its place, by what the plantings that it starts from told (decision 36). */
function ofPlanting(path: string | undefined, raw: Raw, speaker: Speaker): Asked {
  const { frame, onion, practice, believed } = openPlanting(path, raw, speaker);
  if (believed === null) return { onion, practice, frame };
  const assumed = [...frame.assumed, speaker.say('learnt.before')];
  return { onion, practice, frame: { ...frame, assumed, site: beliefSite(frame.site, believed) } };
}
