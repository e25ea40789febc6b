import {
  countryOf,
  districtAssumption,
  keepGrounds,
  kitchenKindsOf,
  sizesAssumption,
} from '@neckfall/answers';
import { cultivars, usualGramsPerWeek } from '@neckfall/data';
import {
  answerCommon,
  type CommonQuestion,
  commonQuestions,
  storeClimateOf,
  surveyOf,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { answerRows } from '../documents/answers-csv.ts';
import { answersDocument, type QuestionsTold, questionList } from '../documents/answers-document.ts';
import type { OpenFrame } from '../frame/frame.ts';
import { weatherWarnings } from '../frame/weather-notes.ts';
import { readKitchen } from '../options/keep-options.ts';
import type {
  PlaceOptions,
  RawBatchOption,
  RawOutputOptions,
  RawPlaceOptions,
} from '../options/place-options.ts';
import type { RawQuestionOptions } from '../options/question-options.ts';
import { csv } from '../output/csv.ts';
import { answerInFull, answersInShort, questionsText } from '../text/answers-text.ts';
import type { Answer } from './answer.ts';

export type RawAnswers = RawPlaceOptions & RawOutputOptions & RawBatchOption & RawQuestionOptions;

/** Of whom nobody says how many eat. */
export const usualPeople = 2;

/** What people ask answered for a place. @param question null: all of them, in short */
export function answersAnswer(
  options: PlaceOptions,
  question: CommonQuestion | null,
  raw: RawQuestionOptions,
  speaker: Speaker,
  open: OpenFrame,
): Answer & { told: QuestionsTold } {
  const kitchen = readKitchen({ people: String(usualPeople), ...raw }, null, null, speaker);
  const frame = open(options, speaker);
  const { site, assumed, warnings } = frame;
  const { today, sunHours } = options;
  const country = countryOf(frame.place);
  const usual = usualGramsPerWeek(country);
  const growing = { sunHours };
  warnings.push(...weatherWarnings(frame, today, today + 364));
  const asked = {
    today,
    options: growing,
    survey: surveyOf(site, today, growing),
    household: { ...kitchen, gramsPerWeek: kitchen.people * usual.gramsPerPerson },
    kinds: kitchenKindsOf(cultivars, country),
  };
  const answers = (question === null ? commonQuestions : [question]).map((one) =>
    answerCommon(site, one, asked),
  );
  assumed.push(
    ...districtAssumption(site.practice, speaker),
    sizesAssumption(asked.survey.lead().summary.plan.water, speaker),
  );
  for (const answer of answers) {
    if (answer.question !== 'how-many') continue;
    const store = storeClimateOf(site.climate, asked.household.store);
    const grounds = keepGrounds({ year: answer.year, store }, usual, site.practice, speaker);
    assumed.push(...grounds.filter((ground) => !assumed.includes(ground)));
  }
  const told: QuestionsTold = { frame, country, answers };
  return {
    text: () => (question === null ? answersInShort(told) : answerInFull(told)),
    json: () => answersDocument(told),
    csv: () => csv(answerRows(answersDocument(told))),
    warnings,
    told,
  };
}

/** What may be asked. */
export function questionsAnswer(speaker: Speaker): Answer {
  return {
    text: () => questionsText(speaker),
    json: () => questionList(speaker),
    csv: () => csv(questionList(speaker)),
    warnings: [],
  };
}
