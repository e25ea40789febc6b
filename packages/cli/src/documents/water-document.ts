import { waterCautions, waterDayOf } from '@neckfall/answers';
import { formatDay, type TendedCrop, type WaterAnswer } from '@neckfall/engine';
import type { Frame } from '../frame/frame.ts';
import { documentHead } from './document-head.ts';
import { planDocument } from './plan-document.ts';
import { dateRangeOf, rangeOf, round } from './values.ts';
import type { WaterDocument } from './water-schema.ts';

export function waterDocument(
  of: { planting: { id: string; name: string } | null; frame: Frame; cultivar: string | null },
  { summary, ground, today }: TendedCrop,
  water: WaterAnswer,
): WaterDocument {
  const { frame } = of;
  return {
    schema: 'neckfall/water@1',
    ...documentHead(frame),
    planting: of.planting,
    plan: planDocument(summary.plan, of.cultivar),
    asOf: formatDay(today),
    bed: {
      areaM2: ground.areaM2 === null ? null : round(ground.areaM2),
      watering: water.watering,
      efficiency: water.efficiency,
      flowLPerH: ground.flowLPerH,
      waterSaltDsPerM: ground.waterSaltDsPerM,
    },
    today: water.today && todayOf(water.today),
    next: dateRangeOf(water.next),
    following: dateRangeOf(water.following),
    stop: dateRangeOf(water.stop),
    seasonMm: water.seasonMm && {
      need: rangeOf(water.seasonMm.need),
      rain: rangeOf(water.seasonMm.rain),
      given: rangeOf(water.seasonMm.given),
    },
    salt: water.salt && {
      yieldShare: round(water.salt.yieldShare),
      leachingShare: round(water.salt.leachingShare),
    },
    cautions: waterCautions(frame.speaker),
    ...(water.days.length > 0 && { days: water.days.map(waterDayOf) }),
  };
}

function todayOf({ waterNow, litresForBed, minutes, ...mm }: NonNullable<WaterAnswer['today']>) {
  const short = (value: number | null) => (value === null ? null : round(value, 1));
  return {
    depletionMm: round(mm.depletionMm, 1),
    readilyAvailableMm: round(mm.readilyAvailableMm, 1),
    waterNow,
    litresPerM2: round(mm.litresPerM2, 1),
    litresForBed: short(litresForBed),
    minutes: short(minutes),
  };
}
