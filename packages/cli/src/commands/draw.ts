import { loadLater, type Say, type Speaker } from '@neckfall/words';
import type { Command } from 'commander';
import { hand } from '../answer/deliver.ts';
import { drawBulbs, drawStarts } from '../answer/draw-crop.ts';
import { drawCropYear, drawPlaceYear } from '../answer/draw-year.ts';
import { type PictureAnswer, pictureFile } from '../answer/picture-answer.ts';
import { planOf } from '../answer/season-answer.ts';
import { openFrame } from '../frame/frame.ts';
import { addPlaceOptions, addPlanOptions } from '../options/add-options.ts';
import { example } from '../options/example.ts';
import { readOnion } from '../options/onion-options.ts';
import {
  isOfCrop,
  type PictureName,
  type RawPicture,
  readPicture,
  readPictureForm,
} from '../options/picture-options.ts';
import { type RawPlaceOptions, readPlaceOptions } from '../options/place-options.ts';
import { readDays, readPractice } from '../options/plan-options.ts';
import { refuseGarden } from '../options/planting-options.ts';
import { speakerFor } from '../options/speaker-for.ts';
import { refuse } from '../refusal/refusal.ts';

type Raw = RawPlaceOptions & RawPicture;

export function addDraw(root: Command, say: Say): void {
  const command = root.command('draw').description(say('help.draw'));
  addPlaceOptions(command, say);
  command.option('--picture <year|bulbs|starts>', say('help.draw.picture'));
  addPlanOptions(command, say, true);
  command
    .option('--json', say('help.draw.json'))
    .option('--out <file>', say('help.draw.out'))
    .option('--units <metric|us>', say('help.units'))
    .option('--debug', say('help.debug'))
    .addHelpText('after', example(say, 'draw Lyon --picture bulbs --class long --start sets --date 03-25'))
    .action(async (place: string | undefined, raw: Raw) => {
      // where pictures come from is told by pages and files alone
      await loadLater();
      const speaker = speakerFor(raw);
      const picture = readPicture(raw, speaker);
      const form = readPictureForm(raw, speaker);
      if (form === 'json' && picture !== 'year') throw numbersElsewhere(picture);
      const drawn = draw(place, picture, raw, speaker);
      const { warnings } = drawn.frame;
      await hand(await pictureFile(drawn, form), warnings, raw.out);
    });
}

function draw(place: string | undefined, picture: PictureName, raw: Raw, speaker: Speaker): PictureAnswer {
  refuseGarden(place);
  const options = readPlaceOptions(place, raw);
  if (picture === 'year' && !isOfCrop(raw)) return drawPlaceYear(openFrame(options, speaker));
  const onion = readOnion(raw, speaker);
  const practice = readPractice(raw, speaker);
  if (picture === 'starts') return drawStarts(openFrame(options, speaker), onion, practice);
  const days = readDays(raw, options);
  const frame = openFrame(options, speaker);
  const { plan } = planOf(frame, onion, { ...practice, ...days, sunHours: options.sunHours });
  frame.warnings.push(...onion.warnings);
  return picture === 'bulbs' ? drawBulbs(frame, plan, onion.name) : drawCropYear(frame, plan, onion.name);
}

function numbersElsewhere(picture: 'bulbs' | 'starts') {
  return refuse('picture-numbers', {
    field: '--json',
    values: { value: picture, command: picture === 'bulbs' ? 'season' : 'when' },
  });
}
