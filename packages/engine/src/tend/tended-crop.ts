import type { Fertility, WateringWay } from '../bed/index.ts';
import type { DayNumber } from '../calendar/index.ts';
import type { GardenBed, GardenPlanting, Observation } from '../garden/index.ts';
import type { Plan, SeasonSummary, Site } from '../season/index.ts';

/** What is known of the ground under a crop and of the means to tend it; null where nothing was said. */
export type Ground = {
  /** Of the planting, m². */
  areaM2: number | null;
  watering: WateringWay | null;
  flowLPerH: number | null;
  waterSaltDsPerM: number | null;
  fertility: Fertility | null;
  compostKgPerM2: number | null;
  afterLegume: boolean | null;
  soilPh: number | null;
  feedProduct: string | null;
};

/** A ground of which nothing is known. */
export const groundUnsaid: Ground = {
  areaM2: null,
  watering: null,
  flowLPerH: null,
  waterSaltDsPerM: null,
  fertility: null,
  compostKgPerM2: null,
  afterLegume: null,
  soilPh: null,
  feedProduct: null,
};

/** A crop as its grower tends it on a day. */
export type TendedCrop = {
  /** With what was seen of the crop learnt into it, and the weather that came. */
  site: Site;
  plan: Plan;
  /** Of this plan at this site. */
  summary: SeasonSummary;
  ground: Ground;
  /** What was seen of it and done to it, in any order; later than today is passed over. */
  observations: readonly Observation[];
  today: DayNumber;
  /** Day it was lifted; null: it stands. */
  liftedOn: DayNumber | null;
};

const cm2PerM2 = 10_000;

/** The ground of a planting, in its bed where it lies in one. Plants at their distances tell its area, else the bed does. */
export function groundOf(planting: GardenPlanting, bed: GardenBed | null): Ground {
  const { plants, plantsPerStation, rowDistanceCm, plantDistanceCm } = planting;
  const planted =
    plants !== null && rowDistanceCm !== null && plantDistanceCm !== null
      ? ((plants / (plantsPerStation ?? 1)) * rowDistanceCm * plantDistanceCm) / cm2PerM2
      : null;
  const whole = bed?.lengthM && bed.widthM ? bed.lengthM * bed.widthM : null;
  if (!bed) return { ...groundUnsaid, areaM2: planted };
  const { watering, flowLPerH, waterSaltDsPerM, fertility, compostKgPerM2, afterLegume } = bed;
  const { soilPh, feedProduct } = bed;
  return {
    areaM2: planted ?? whole,
    watering,
    flowLPerH,
    waterSaltDsPerM,
    fertility,
    compostKgPerM2,
    afterLegume,
    soilPh,
    feedProduct,
  };
}
