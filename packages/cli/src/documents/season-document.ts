import { dayOf } from '@neckfall/answers';
import { classOfType, type DayRow, formatDay, type SeasonSummary } from '@neckfall/engine';
import type { Frame } from '../frame.ts';
import { documentHead } from './document-head.ts';
import { practiceOf } from './practice.ts';
import type { SeasonDocument } from './season-schema.ts';
import { dateRangeOf, onsetRangeOf, rangeOf, round, seasonSharesOf } from './values.ts';

export function seasonDocument(
  frame: Frame,
  summary: SeasonSummary,
  cultivar: string | null,
  days: DayRow[] | null,
): SeasonDocument {
  const { plan } = summary;
  return {
    schema: 'neckfall/season@1',
    ...documentHead(frame),
    plan: {
      class: classOfType[plan.type],
      type: plan.type,
      cultivar,
      start: plan.start,
      date: formatDay(plan.startDay),
      plantOut: plan.plantOutDay === null ? null : formatDay(plan.plantOutDay),
      ...practiceOf(plan),
    },
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
    reason: frame.speaker.reason(summary.reason),
    ...(days && { days: days.map(dayOf) }),
  };
}
