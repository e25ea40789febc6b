import {
  answerLabel,
  causeAdvice,
  causeLabel,
  causeLook,
  evidenceSentence,
  nextYearSentence,
  questionText,
  rescueSentences,
  symptomLabel,
  symptomNote,
  whatIfSentence,
  whyCautionSentences,
  whyLead,
} from '@neckfall/answers';
import {
  type CauseFound,
  type Change,
  type Evidence,
  formatDay,
  type GrownSo,
  type PlanForm,
  passedOver,
  type Question,
  questionAnswers,
  symptoms,
  symptomTimes,
  type WhatIf,
  type WhyAnswer,
  type WhyAsked,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Frame } from '../frame/frame.ts';
import { documentHead } from './document-head.ts';
import { planDocument } from './plan-document.ts';
import { rangeOf, round } from './values.ts';
import type { WhyDocument } from './why-schema.ts';

/** A crop that is asked about, and where; the site of the frame is the one it grew in. */
export type OpenWhy = {
  frame: Frame;
  asked: WhyAsked;
  /** The onion by its name; null where it has none. */
  cultivar: string | null;
  /** Of the garden's planting; null where the plan is of the command line. */
  plantingId: string | null;
};

/** Why it came to what was seen, as it is told. */
export type WhyTold = OpenWhy & { answer: WhyAnswer };

export function whyDocument({ frame, asked, cultivar, plantingId, answer }: WhyTold): WhyDocument {
  const { speaker } = frame;
  const { rescue, ask, nextYear } = answer;
  const [unseen, ...probabilities] = partsOfOne([
    answer.unseen,
    ...answer.causes.map(({ probability }) => probability),
  ]);
  return {
    schema: 'neckfall/why@1',
    ...documentHead(frame),
    today: formatDay(asked.today),
    planting: plantingId,
    plan: planDocument(asked.plan, cultivar),
    said: [...new Set([...asked.said].map(saidName))],
    seen: [...rescue.symptoms],
    noticed: asked.noticed === null ? null : formatDay(asked.noticed),
    answers: (Object.entries(asked.answers) as AnswerGiven[]).map(([question, answer]) => ({
      question,
      answer,
    })),
    answer: whyLead(answer, speaker),
    rescue: rescueSentences(answer, speaker),
    eating: rescue.eating,
    storing: rescue.storing,
    asGrown: grownOf(answer.asGrown),
    causes: answer.causes.map((found, at) => causeOf(found, probabilities[at], answer.asGrown, speaker)),
    unseen,
    ask: ask && askOf(ask, speaker),
    nextYear: nextYear && {
      plan: planDocument(nextYear.plan, nextYear.plan.type === asked.plan.type ? cultivar : null),
      change: nextYear.change && codedOf(nextYear.change),
      sentence: nextYearSentence(nextYear, speaker),
      ...grownOf(nextYear.grown),
    },
    cautions: whyCautionSentences(answer, speaker),
    cautionCodes: [...answer.cautions],
  };
}

type AnswerGiven = [Question, WhyDocument['answers'][number]['answer']];

function causeOf(
  { cause, whatIf, ...found }: CauseFound,
  probability: number,
  asGrown: GrownSo,
  speaker: Speaker,
): WhyDocument['causes'][number] {
  const told = (evidence: readonly Evidence[]) => evidence.map((one) => evidenceSentence(one, speaker));
  return {
    cause,
    name: causeLabel(cause, speaker),
    probability,
    for: told(found.for),
    against: told(found.against),
    evidence: { for: found.for.map(codedOf), against: found.against.map(codedOf) },
    look: causeLook(cause, speaker),
    advice: causeAdvice(cause, speaker),
    whatIf: whatIf && whatIfOf(whatIf, asGrown, speaker),
  };
}

function whatIfOf(whatIf: WhatIf, asGrown: GrownSo, speaker: Speaker) {
  return {
    change: whatIf.change.code,
    changed: codedOf(whatIf.change),
    sentence: whatIfSentence(whatIf, asGrown, speaker),
    ...grownOf(whatIf.grown),
    atWork: grownOf(whatIf.atWork),
  };
}

function grownOf(grown: GrownSo): WhyDocument['asGrown'] {
  const dateOf = (day: number | null) => (day === null ? null : formatDay(day));
  return {
    outcome: grown.outcome,
    goodShare: round(grown.goodShare),
    bulbDiameterMm: rangeOf(grown.bulbDiameterMm),
    leavesAtOnset: grown.leavesAtOnset === null ? null : round(grown.leavesAtOnset),
    boltedPlantsShare: round(grown.boltedShare),
    onset: dateOf(grown.onset),
    neckFall: dateOf(grown.neckFall),
    soundShare: grown.soundShare === null ? null : round(grown.soundShare),
  };
}

/** Days as dates, numbers as documents have them. */
function codedOf(of: Evidence | Change): WhyDocument['causes'][number]['evidence']['for'][number] {
  const { code, ...values } = of;
  const told = Object.entries(values).map(([name, value]: [string, string | number]) => [
    name,
    typeof value === 'string' ? value : name === 'day' ? formatDay(value) : round(value),
  ]);
  return { code, ...Object.fromEntries(told) };
}

function askOf(question: Question, speaker: Speaker): NonNullable<WhyDocument['ask']> {
  const answers = [...questionAnswers[question], passedOver];
  return {
    question,
    sentence: questionText(question, speaker),
    answers,
    // each is an answer of this question
    labels: answers.map((answer) => answerLabel(question, answer as never, speaker)),
  };
}

/** What documents call a field of a plan. */
function saidName(field: keyof PlanForm): WhyDocument['said'][number] {
  if (field === 'type' || field === 'traits') return 'onion';
  if (field === 'startDay') return 'date';
  return field === 'plantOutDay' ? 'plantOut' : field;
}

/** Thousandths of shares that sum to 1, rounded so that they still do. */
export function partsOfOne(shares: readonly number[]): number[] {
  const whole = 1000;
  const parts = shares.map((share, at) => ({ at, floor: Math.floor(share * whole), share }));
  const left = whole - parts.reduce((sum, { floor }) => sum + floor, 0);
  const raised = parts
    .toSorted((a, b) => b.share * whole - b.floor - (a.share * whole - a.floor))
    .slice(0, Math.max(0, left));
  return parts.map((part) => (part.floor + (raised.includes(part) ? 1 : 0)) / whole);
}

/** What may be seen, as `--list` tells it. */
export function symptomList(speaker: Speaker) {
  return symptoms.map((id) => ({
    id,
    label: symptomLabel(id, speaker),
    note: symptomNote(id, speaker),
    time: symptomTimes[id],
  }));
}
