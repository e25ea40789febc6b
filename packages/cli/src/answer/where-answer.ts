import { districtAssumption, placeFacts, sizesAssumption, todaySentence } from '@neckfall/answers';
import { surveyPlace } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { whereDocument } from '../documents/where-document.ts';
import type { OpenFrame } from '../frame/frame.ts';
import { weatherWarnings } from '../frame/weather-notes.ts';
import type {
  PlaceOptions,
  RawBatchOption,
  RawOutputOptions,
  RawPlaceOptions,
} from '../options/place-options.ts';
import { csv } from '../output/csv.ts';
import { whereText } from '../text/where-text.ts';
import type { Answer } from './answer.ts';

export type RawWhere = RawPlaceOptions & RawOutputOptions & RawBatchOption;

/** What suits a place, be it of a command line or of a row of a batch. */
export function whereAnswer(options: PlaceOptions, speaker: Speaker, open: OpenFrame): Answer {
  const frame = open(options, speaker);
  const { sunHours, today } = frame.options;
  const facts = placeFacts(frame.site, today);
  frame.warnings.push(...weatherWarnings(frame, today, today + 364));
  const answer = surveyPlace(frame.site, today, { sunHours });
  frame.assumed.push(
    ...districtAssumption(frame.site.practice, speaker),
    sizesAssumption((answer.now ?? answer.classes[0]).summary.plan.water, speaker),
  );
  const sentence = todaySentence(answer, today, frame.speaker);
  const document = () => whereDocument(frame, facts, answer, sentence);
  return {
    text: () => whereText(frame, facts, answer, sentence),
    json: document,
    csv: () => csv(document().climate.months),
    warnings: frame.warnings,
  };
}
