import { choiceWhy, rankingSentence } from '@neckfall/answers';
import { type Choice, classOfType, formatDay } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import type { Frame } from '../frame/frame.ts';
import type { CsvValue } from '../output/csv.ts';
import { documentHead } from './document-head.ts';
import { dateRangeOf, rangeOf } from './values.ts';
import type { WhichDocument } from './which-schema.ts';

/** @param considered kinds tried, of which `choices` are the best */
export function whichDocument(frame: Frame, choices: readonly Choice[], considered: number): WhichDocument {
  return {
    schema: 'neckfall/which@1',
    ...documentHead(frame),
    choices: choices.map((choice) => choiceOf(choice, frame.speaker)),
    ranking: rankingSentence(frame.speaker),
    considered,
  };
}

function choiceOf(choice: Choice, speaker: Speaker): WhichDocument['choices'][number] {
  const { rank, alike, kind, summary } = choice;
  return {
    rank,
    alike,
    cultivars: [...kind.names],
    class: classOfType[kind.type],
    type: kind.type,
    start: kind.start,
    date: formatDay(summary.plan.startDay),
    plantOut: summary.plantOut && dateRangeOf(summary.plantOut),
    onset: dateRangeOf(summary.onset),
    neckFall: dateRangeOf(summary.neckFall),
    bulbDiameterMm: rangeOf(summary.bulbDiameterMm),
    goodShare: summary.seasonShares.good,
    outcome: summary.outcome,
    gamble: summary.gamble,
    boltedPlantsShare: rangeOf(summary.boltedPlantsShare),
    keepsMonths: [...kind.keepsMonths],
    keepsFrom: kind.keepsFrom,
    why: choiceWhy(choice, speaker),
  };
}

/** One row a choice; names are joined and ranges reduced to their middle. */
export function whichRows({ choices }: WhichDocument): Record<string, CsvValue>[] {
  return choices.map(
    ({ cultivars, plantOut, onset, neckFall, bulbDiameterMm, boltedPlantsShare, keepsMonths, ...row }) => ({
      ...row,
      cultivars: cultivars.join('; '),
      plantOut: plantOut?.p50 ?? null,
      onset: onset.p50,
      neckFall: neckFall.p50,
      bulbDiameterMm: bulbDiameterMm.p50,
      boltedPlantsShare: boltedPlantsShare.p50,
      keepsMonthsFrom: keepsMonths[0],
      keepsMonthsTo: keepsMonths[1],
    }),
  );
}
