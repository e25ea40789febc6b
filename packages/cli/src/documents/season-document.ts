import { dayOf } from '@neckfall/answers';
import {
  type DayRow,
  formatDay,
  type LeafCheckpoint,
  type SeasonSummary,
  type SpanPart,
  type SpanParts,
} from '@neckfall/engine';
import type { Frame } from '../frame/frame.ts';
import { documentHead } from './document-head.ts';
import { planDocument } from './plan-document.ts';
import type { SeasonDocument } from './season-schema.ts';
import { dateRangeOf, onsetRangeOf, rangeOf, round, seasonSharesOf } from './values.ts';

/** What a season is told by besides its summary. */
export type SeasonChecks = { spans: SpanParts; leafCheckpoint: LeafCheckpoint | null };

export function seasonDocument(
  frame: Frame,
  summary: SeasonSummary,
  cultivar: string | null,
  days: DayRow[] | null,
  { spans, leafCheckpoint }: SeasonChecks,
): SeasonDocument {
  return {
    schema: 'neckfall/season@1',
    ...documentHead(frame),
    plan: planDocument(summary.plan, cultivar),
    emergence: dateRangeOf(summary.emergence),
    plantOut: summary.plantOut && dateRangeOf(summary.plantOut),
    onset: onsetRangeOf(summary.onset),
    neckFall: dateRangeOf(summary.neckFall),
    leavesMadeAtOnset: rangeOf(summary.leavesMadeAtOnset),
    leavesGreenAtOnset: rangeOf(summary.leavesGreenAtOnset),
    shootGAtOnset: rangeOf(summary.shootGAtOnset),
    bulbMassG: rangeOf(summary.bulbMassG),
    bulbDiameterMm: rangeOf(summary.bulbDiameterMm),
    plantSpreadCv: summary.plantSpreadCv,
    totalKgM2: rangeOf(summary.totalKgM2),
    marketableKgM2: rangeOf(summary.marketableKgM2),
    boltedPlantsShare: rangeOf(summary.boltedPlantsShare),
    winterKilledPlantsShare: rangeOf(summary.winterKilledPlantsShare),
    emergedShare: round(summary.emergedShare),
    thirstyDays: rangeOf(summary.thirstyDays),
    seasonShares: seasonSharesOf(summary.seasonShares),
    outcome: summary.outcome,
    gamble: summary.gamble,
    spans: {
      neckFallDays: spans.neckFallDays && spanOf(spans.neckFallDays),
      bulbDiameterMm: spans.bulbDiameterMm && spanOf(spans.bulbDiameterMm),
    },
    leafCheckpoint: leafCheckpoint && checkpointOf(leafCheckpoint),
    reason: frame.speaker.reason(summary.reason),
    ...(days && { days: days.map(dayOf) }),
  };
}

function spanOf({ all, weather, kind }: SpanPart) {
  return { all: round(all, 1), weather: round(weather, 1), kind: round(kind, 1) };
}

function checkpointOf({ day, leavesGreen, parting }: LeafCheckpoint) {
  return {
    date: formatDay(day),
    leavesGreen: rangeOf(leavesGreen),
    smallUpToLeaves: parting?.smallUpTo ?? null,
    goodDiameterMm: parting && round(parting.goodMm, 1),
    smallDiameterMm: parting && round(parting.smallMm, 1),
  };
}
