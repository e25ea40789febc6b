import {
  answerLabel,
  causeAdvice,
  causeLabel,
  causeLook,
  chanceText,
  evidenceSentence,
  leadOf,
  nextYearSentence,
  questionText,
  rescueSentences,
  unseenSentence,
  whatIfSentence,
  whyCautionSentences,
  whyLead,
} from '@neckfall/answers';
import {
  type CauseFound,
  passedOver,
  type Question,
  questionAnswers,
  type WhyAnswer,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { symptomList, type WhyTold } from '../documents/why-document.ts';
import { howWeKnow } from './how-we-know.ts';
import { table } from './table.ts';
import { wrap } from './wrap.ts';

/** Causes that are told in full: so many at most, and so likely, 0…1. */
const toldInFull = { most: 3, from: 0.1 } as const;

/** What can be saved comes first; then why, what would tell more, what to do next year, and what all this rests on. */
export function whyText({ frame, answer }: WhyTold): string {
  const { speaker } = frame;
  const { say } = speaker;
  const sections = [
    wrap(whyLead(answer, speaker)),
    titled(say('why-told.rescue'), rescueSentences(answer, speaker)),
    causesTold(answer, speaker),
    ...(answer.ask ? [questionTold(answer.ask, speaker)] : []),
    titled(say('why-told.next-year'), nextYearLines(answer, speaker)),
    titled(say('app.cautions'), whyCautionSentences(answer, speaker)),
    howWeKnow(frame, null, null),
  ];
  return `${sections.join('\n\n')}\n`;
}

function titled(title: string, lines: readonly string[]): string {
  return [title, ...lines.map((line) => `  ${wrap(line, 2)}`)].join('\n');
}

function causesTold(answer: WhyAnswer, speaker: Speaker): string {
  const { causes, asGrown } = answer;
  const { say } = speaker;
  const count = causes.findIndex(({ probability }, at) => at > 0 && probability < toldInFull.from);
  const full = causes.slice(0, Math.min(count < 0 ? causes.length : count, toldInFull.most));
  const others = causes
    .slice(full.length)
    .map(({ cause, probability }) =>
      say('why-told.other', { cause: causeLabel(cause, speaker), chance: chanceText(probability, speaker) }),
    );
  const lines = [
    ...(others.length === 0 ? [] : [say('why-told.others', { causes: others.join('; ') })]),
    unseenSentence(answer, speaker),
  ];
  return [
    say('why-told.causes'),
    ...full.map((found, at) => causeTold(at + 1, found, asGrown, speaker)),
    ...lines.map((line) => `  ${wrap(line, 2)}`),
  ].join('\n');
}

function causeTold(
  place: number,
  { cause, probability, whatIf, ...evidence }: CauseFound,
  asGrown: WhyAnswer['asGrown'],
  speaker: Speaker,
): string {
  const { say } = speaker;
  const head = say('why-told.other', {
    cause: causeLabel(cause, speaker),
    chance: chanceText(probability, speaker),
  });
  const look = causeLook(cause, speaker);
  const lines = [
    ...evidence.for.map((one) => evidenceSentence(one, speaker)),
    ...evidence.against.map((one) => say('why-told.against', { sentence: evidenceSentence(one, speaker) })),
    ...(whatIf ? [whatIfSentence(whatIf, asGrown, speaker)] : []),
    ...(look === null ? [] : [say('why-told.look', { sentence: look })]),
  ];
  return [`  ${place}. ${wrap(head, 5)}`, ...lines.map((line) => `     ${wrap(line, 5)}`)].join('\n');
}

function questionTold(question: Question, speaker: Speaker): string {
  const { say } = speaker;
  const answers = [...questionAnswers[question], passedOver].map((answer) => [
    `--said ${question}=${answer}`,
    // each is an answer of this question
    answerLabel(question, answer as never, speaker),
  ]);
  const asked = titled(say('why-told.ask'), [questionText(question, speaker), say('why-told.answer-with')]);
  return `${asked}\n${table([{ title: '' }, { title: '' }], answers)}`;
}

function nextYearLines(answer: WhyAnswer, speaker: Speaker): string[] {
  const { say, dayWithYear } = speaker;
  const { nextYear } = answer;
  const { plan } = nextYear;
  const lead = leadOf(answer);
  return [
    ...(lead ? [causeAdvice(lead.cause, speaker)] : []),
    nextYearSentence(nextYear, speaker),
    say('why-told.next-start', {
      type: say(`type-head.${plan.type}`),
      start: say(`start.${plan.start}`),
      date: dayWithYear(plan.startDay),
    }),
  ];
}

/** What may be seen, a line each; what tells it from what looks like it stands under it. */
export function symptomsText(speaker: Speaker): string {
  const { say } = speaker;
  const rows = symptomList(speaker);
  const width = Math.max(...rows.map(({ id }) => id.length));
  const lines = rows.map(
    ({ id, label, note }) => `  ${id.padEnd(width)}  ${wrap(`${label}. ${note}`, width + 4)}`,
  );
  return `${[wrap(say('why-told.list')), ...lines].join('\n')}\n`;
}
