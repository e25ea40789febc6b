import type { CommonAnswer, DayNumber, SeasonSummary } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { comingDay } from './coming-day.ts';

/** For whom an answer to a common question is told. */
export type QuestionContext = {
  /** Its name. */
  place: string;
  today: DayNumber;
  /** ISO alpha-2 code; null: not known. */
  country: string | null;
};

/** What is said of one: the answer, why, and where care is needed. */
export type QuestionSaid = { headline: string; because: string[]; cautions: string[] };

export type AnswerTo<Question extends CommonAnswer['question']> = Extract<
  CommonAnswer,
  { question: Question }
>;

/** Words of a season as its sentences need them. */
export function seasonWords(summary: SeasonSummary, today: DayNumber, speaker: Speaker) {
  const { say, years, quantity, plants } = speaker;
  const { plan, seasonShares, bulbDiameterMm, neckFall, boltedPlantsShare } = summary;
  const date = comingDay(plan.startDay, today, speaker);
  return {
    kind: say(`type.${plan.type}`),
    date,
    crop: say(`crop.${plan.start}`, { type: say(`type.${plan.type}`), date }),
    years: years(seasonShares.good, summary.years),
    bare: years(seasonShares['no-bulb'], summary.years),
    size: bulbDiameterMm ? quantity('bulbLength', bulbDiameterMm.p50) : say('none'),
    ripe: neckFall.days ? comingDay(neckFall.days.p50, today, speaker) : say('never'),
    flower: plants(boltedPlantsShare?.p50 ?? 0),
  };
}

/** Of plants, the middle of the years, 0…1. */
export function flowering({ boltedPlantsShare }: SeasonSummary): number {
  return boltedPlantsShare?.p50 ?? 0;
}
