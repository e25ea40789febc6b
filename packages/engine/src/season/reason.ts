import { plantValuesOf, verdicts } from '../plant/index.ts';
import { neededSunUpH } from './needed-sun-up.ts';
import type { Site } from './site.ts';
import type { PlanReasonCode, Reason, SeasonSummary, YearReasonCode } from './summary.ts';

const planCodes: Readonly<Record<PlanReasonCode, true>> = {
  good: true,
  'small-few-leaves': true,
  'small-season': true,
  'days-too-short': true,
  'never-up': true,
  'too-late': true,
  'winter-lifted': true,
  'winter-cold': true,
  'bolts-sets': true,
  'bolts-cold': true,
  'unripe-autumn': true,
};

/** Every code a reason may have; each needs a message. */
export const reasonCodes: readonly (PlanReasonCode | YearReasonCode)[] = [
  ...(Object.keys(planCodes) as PlanReasonCode[]),
  'window',
  ...verdicts.map((verdict) => `no-window-${verdict}` as const),
];

/** Why a plan ends as it does: a code of {@link reasonCodes} with the numbers that decided. */
export function reasonFor(site: Site, s: Omit<SeasonSummary, 'reason'>): Reason {
  const type = plantValuesOf(site.values, s.plan);
  const round = (x: number | undefined, digits = 0) => (x === undefined ? 0 : Number(x.toFixed(digits)));
  const table = site.dayTable(2027);
  const longestPhotoperiodH = table.photoperiodH.slice(0, 366).reduce((a, b) => Math.max(a, b), 0);
  const values = {
    leaves: round(s.leavesMadeAtOnset?.p50),
    diameterMm: round(s.bulbDiameterMm?.p50),
    sunUpH: s.onset.days?.sunUpH ?? 0,
    longestSunUpH: site.longestDayH,
    neededSunUpH: neededSunUpH(site, type.criticalPhotoperiodH),
    boltedTenths: Math.round(10 * (s.boltedPlantsShare?.p50 ?? 0)),
    killedTenths: Math.round(10 * (s.winterKilledPlantsShare?.p50 ?? 0)),
    type: s.plan.type,
    start: s.plan.start,
  };
  return { code: codeFor(s, longestPhotoperiodH, type.criticalPhotoperiodH), values };
}

/** A bulb that starts on fewer leaves than this stays small for want of leaves. */
const fewLeaves = 8;

function codeFor(s: Omit<SeasonSummary, 'reason'>, longestH: number, criticalH: number): PlanReasonCode {
  switch (s.outcome) {
    case 'good':
      return 'good';
    case 'winter-killed':
      return mostlyLifted(s) ? 'winter-lifted' : 'winter-cold';
    case 'bolts':
      return s.plan.start === 'sets' ? 'bolts-sets' : 'bolts-cold';
    case 'no-bulb':
      if (longestH < criticalH + 0.3) return 'days-too-short';
      return s.emergence.share < 0.5 ? 'never-up' : 'too-late';
    case 'not-ripe':
      return 'unripe-autumn';
    case 'small':
      return (s.leavesMadeAtOnset?.p50 ?? 0) < fewLeaves ? 'small-few-leaves' : 'small-season';
  }
}

function mostlyLifted({
  frostLiftedPlantsShare: lifted,
  winterKilledPlantsShare: lost,
}: Omit<SeasonSummary, 'reason'>): boolean {
  return lifted !== null && lost !== null && lifted.p50 > lost.p50 / 2;
}
