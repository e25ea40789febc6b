import { symptomCalled } from '@neckfall/answers';
import {
  type GardenKitchen,
  mostSymptoms,
  type PlanForm,
  passedOver,
  type Question,
  questionAnswers,
  questions,
  type Said,
  type StoreSaid,
  type Symptom,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { nearest } from '../refusal/nearest.ts';
import { refuse } from '../refusal/refusal.ts';
import { readStore, storeOf } from './keep-options.ts';
import { optionOf, type RawPlanOptions } from './plan-options.ts';
import { symptomsNear } from './symptoms-near.ts';

/** Options of `why` alone, as commander gives them. */
export type RawWhyOptions = {
  seen?: string[];
  list?: boolean;
  said?: string[];
  about?: boolean;
  store?: string;
  noticed?: string;
  year?: string;
};

/** Names of symptoms or words that people use, each symptom once, in the order in which they were said. */
export function readSeen(raw: RawWhyOptions, speaker: Speaker): Symptom[] {
  const words = (raw.seen ?? [])
    .flatMap((text) => text.split(/[,;]/))
    .map((word) => word.trim())
    .filter((word) => word !== '');
  if (words.length === 0) throw refuse('why-seen', { field: '--seen', expected: '<symptoms>' });
  const seen = [...new Set(words.map((word) => readSymptom(word, speaker)))];
  if (seen.length > mostSymptoms) {
    const values = { count: seen.length, most: mostSymptoms };
    throw refuse('why-seen-many', { field: '--seen', values });
  }
  return seen;
}

function readSymptom(word: string, speaker: Speaker): Symptom {
  const called = symptomCalled(word, speaker);
  if (called) return called;
  throw refuse('why-seen-unknown', {
    field: '--seen',
    values: { value: word },
    nearest: symptomsNear(word, speaker),
  });
}

const saidField = '--said';

/** Fields of a plan that are answered by a question too. */
const samePlan: Partial<Record<Question, { option: keyof RawPlanOptions | 'sun'; flag: string }>> = {
  watering: { option: 'water', flag: '--water' },
  sun: { option: 'sun', flag: '--sun' },
  'set-size': { option: 'setSize', flag: '--set-size' },
};

/** What was answered, `QUESTION=ANSWER` each; of two answers to a question the later one counts. */
export function readSaid(raw: RawWhyOptions & RawPlanOptions & { sun?: string }, speaker: Speaker): Said {
  const said: Record<string, string> = {};
  for (const text of raw.said ?? []) {
    const [asked, answer, ...rest] = text.split('=');
    if (answer === undefined || rest.length > 0)
      throw refuse('why-said-form', { field: saidField, values: { value: text, example: 'watering=often' } });
    const question = choiceIn(text, asked, questions, speaker);
    said[question] = choiceIn<string>(text, answer, [...questionAnswers[question], passedOver], speaker);
    const same = samePlan[question];
    if (same && said[question] !== passedOver && raw[same.option] !== undefined) {
      const values = { other: same.flag, why: speaker.say('clash.said-twice') };
      throw refuse('contradiction', { field: `${saidField} ${text}`, values });
    }
  }
  // each question was given one of its own answers
  return said as Said;
}

/** One of the choices named by a part of what was typed. */
function choiceIn<Choice extends string>(
  text: string,
  part: string,
  choices: readonly Choice[],
  { any }: Speaker,
): Choice {
  const typed = part.trim().toLowerCase();
  const found = choices.find((choice) => choice === typed);
  if (found !== undefined) return found;
  throw refuse('choice', {
    field: saidField,
    values: { value: text },
    expected: any(choices),
    nearest: nearest(typed, choices),
  });
}

/** Fields of the plan that the grower said; all others are what is usual. */
export function fieldsSaid(raw: RawPlanOptions, sunHours: number | null): Set<keyof PlanForm> {
  const { class: printed, cultivar, packetHours, start, date, plantOut } = raw;
  const growing = (Object.keys(optionOf) as (keyof typeof optionOf)[]).filter(
    (field) => raw[optionOf[field]] !== undefined,
  );
  const onion = [printed, cultivar, packetHours].some((word) => word !== undefined);
  return new Set<keyof PlanForm>([
    ...growing,
    ...(onion ? (['type', 'traits'] as const) : []),
    ...(start === undefined ? [] : (['start'] as const)),
    ...(date === undefined ? [] : (['startDay'] as const)),
    ...(plantOut === undefined ? [] : (['plantOutDay'] as const)),
    ...(sunHours === null ? [] : (['sunHours'] as const)),
  ]);
}

/** Where the onions were kept, and whether anybody said so. */
export type Stored = { store: StoreSaid; isSaid: boolean };

/** @param kitchen of the garden; null: there is none */
export function readStored(raw: RawWhyOptions, kitchen: GardenKitchen | null, speaker: Speaker): Stored {
  if (raw.store !== undefined) return { store: readStore(raw.store, kitchen, speaker), isSaid: true };
  const { store = null, storeTempC = null, storeReadings = [] } = kitchen ?? {};
  const isSaid = store !== null || storeTempC !== null || storeReadings.length > 0;
  return { store: storeOf(kitchen), isSaid };
}
