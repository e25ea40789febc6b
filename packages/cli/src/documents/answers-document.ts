import { questionAsked, questionSaid } from '@neckfall/answers';
import {
  type CommonAnswer,
  commonQuestions,
  formatDay,
  type KeepYear,
  type SeasonInRole,
  seasonsIn,
} from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Frame } from '../frame/frame.ts';
import type { AnswersDocument } from './answers-schema.ts';
import { documentHead } from './document-head.ts';
import { planDocument } from './plan-document.ts';
import { dateRangeOf, rangeOf, round, seasonSharesOf } from './values.ts';

/** Common questions answered for a place, and for whom. */
export type QuestionsTold = {
  frame: Frame;
  /** ISO alpha-2 code; null: not known. */
  country: string | null;
  answers: readonly CommonAnswer[];
};

export function answersDocument({ frame, country, answers }: QuestionsTold): AnswersDocument {
  const { speaker, options, label } = frame;
  const { today } = options;
  return {
    schema: 'neckfall/answers@1',
    ...documentHead(frame),
    today: formatDay(today),
    answers: answers.map((answer) => {
      const { headline, because, cautions } = questionSaid(answer, { place: label, today, country }, speaker);
      return {
        question: answer.question,
        asked: questionAsked(answer.question, speaker),
        answer: headline,
        because,
        cautions,
        seasons: seasonsIn(answer).map(seasonOf),
        days: daysOf(answer),
        kitchen: answer.question === 'how-many' ? kitchenOf(answer.year) : null,
      };
    }),
  };
}

function seasonOf({ role, summary }: SeasonInRole) {
  return {
    role,
    plan: planDocument(summary.plan, null),
    outcome: summary.outcome,
    gamble: summary.gamble,
    seasonShares: seasonSharesOf(summary.seasonShares),
    bulbDiameterMm: rangeOf(summary.bulbDiameterMm),
    boltedPlantsShare: rangeOf(summary.boltedPlantsShare),
    winterKilledPlantsShare: rangeOf(summary.winterKilledPlantsShare),
    neckFall: dateRangeOf(summary.neckFall),
  };
}

function daysOf(answer: CommonAnswer): AnswersDocument['answers'][number]['days'] {
  const waiting =
    answer.question === 'never-bulbed'
      ? answer.stranger
      : answer.question === 'from-abroad'
        ? (answer.kinds.at(-1) ?? null)
        : null;
  if (!waiting || !('longestSunUpH' in answer)) return null;
  return { neededSunUpH: round(waiting.neededSunUpH), longestSunUpH: round(answer.longestSunUpH) };
}

function kitchenOf({ household, lots, bedM2, gaps }: KeepYear) {
  return {
    people: household.people,
    gramsPerWeek: round(household.gramsPerWeek),
    bedM2: round(bedM2),
    plants: lots.reduce((sum, { need }) => sum + need.plants, 0),
    lots: lots.map((lot) => ({
      plants: lot.need.plants,
      bedM2: round(lot.bedM2),
      lastsUntil: dateRangeOf(lot.lastsUntil),
    })),
    gaps: gaps.map(({ from, to }) => ({ from: formatDay(from), to: formatDay(to) })),
  };
}

/** What may be asked, by its id and as people ask it. */
export function questionList(speaker: Speaker): { id: string; asked: string }[] {
  return commonQuestions.map((id) => ({ id, asked: questionAsked(id, speaker) }));
}
