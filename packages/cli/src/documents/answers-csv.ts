import type { CsvValue } from '../output/csv.ts';
import type { AnswersDocument } from './answers-schema.ts';

/** One row a season, with the question that it answers; an answer without any has a row of its own. */
export function answerRows({ answers }: AnswersDocument): Record<string, CsvValue>[] {
  return answers.flatMap<Record<string, CsvValue>>(({ question, asked, answer, seasons }) => {
    const head = { question, asked, answer };
    if (seasons.length === 0) return [{ ...head, ...noSeason }];
    return seasons.map(
      ({ role, plan, outcome, seasonShares, bulbDiameterMm, boltedPlantsShare, neckFall }) => ({
        ...head,
        role,
        type: plan.type,
        start: plan.start,
        date: plan.date,
        outcome,
        goodShare: seasonShares.good,
        noBulbShare: seasonShares.noBulb,
        bulbDiameterMm: bulbDiameterMm.p50,
        boltedPlantsShare: boltedPlantsShare.p50,
        neckFall: neckFall.p50,
      }),
    );
  });
}

const noSeason = {
  role: null,
  type: null,
  start: null,
  date: null,
  outcome: null,
  goodShare: null,
  noBulbShare: null,
  bulbDiameterMm: null,
  boltedPlantsShare: null,
  neckFall: null,
};
