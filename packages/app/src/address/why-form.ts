import {
  type DayLengthClass,
  type DayNumber,
  dayLengthClasses,
  mostSymptoms,
  passedOver,
  type Question,
  questionAnswers,
  questions,
  type Said,
  type StartMethod,
  type Symptom,
  startMethods,
  symptoms,
} from '@neckfall/engine';
import { day, type Form, yes } from './form-kinds.ts';

/** What the Why page asks beside the crop. */
export type WhyInAddress = {
  /** What was seen of the crop, in the order in which it was said. */
  symptoms: readonly Symptom[] | null;
  answers: Said | null;
  /** The days of the crop are as remembered. */
  isAbout: true | null;
  /** Day on which it was seen in store. */
  noticed: DayNumber | null;
  /** What was taken for the crop where nothing was said, so that a link shows the same on any day. */
  taken: Taken | null;
};

/** `class`: null where the onion was said. */
export type Taken = { class: DayLengthClass | null; start: StartMethod; date: DayNumber };

const list = (raw: string) => raw.toLowerCase().split(',');

export const whyForms: { [Name in keyof WhyInAddress]: Form<NonNullable<WhyInAddress[Name]>> } = {
  symptoms: {
    key: 'saw',
    expects: 'word',
    read: (raw) => {
      const said = [...new Set(list(raw))];
      const known = said.filter((word): word is Symptom => symptoms.some((symptom) => symptom === word));
      return known.length === said.length ? known.slice(0, mostSymptoms) : undefined;
    },
    write: (seen) => seen.join(','),
  },
  answers: {
    key: 'answers',
    expects: 'word',
    read: (raw) => {
      const said = list(raw).map((part) => part.split('~'));
      const areKnown = said.every(([question, answer]) => isAnswer(question, answer));
      return areKnown ? (Object.fromEntries(said) as Said) : undefined;
    },
    write: (answers) =>
      Object.entries(answers)
        .map((said) => said.join('~'))
        .join(','),
  },
  isAbout: yes('date-about'),
  noticed: day('noticed'),
  taken: {
    key: 'taken',
    expects: 'text',
    read: (raw) => {
      const [printed, start, date = ''] = raw.split('~');
      const known = {
        class: dayLengthClasses.find((candidate) => candidate === printed) ?? null,
        start: startMethods.find((candidate) => candidate === start),
        date: day('').read(date),
      };
      const isWhole = known.start !== undefined && known.date !== undefined;
      return isWhole && (known.class ?? '') === printed ? (known as Taken) : undefined;
    },
    write: ({ class: printed, start, date }) => `${printed ?? ''}~${start}~${day('').write(date)}`,
  },
};

function isAnswer(question: string, answer: string | undefined): boolean {
  if (!questions.some((known) => known === question)) return false;
  const answers: readonly string[] = questionAnswers[question as Question];
  return answer === passedOver || (answer !== undefined && answers.includes(answer));
}
