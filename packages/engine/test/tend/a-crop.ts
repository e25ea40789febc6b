import { dayNumber, formatDay } from '../../src/calendar/index.ts';
import {
  openSite,
  type PlanForm,
  planDefaults,
  runPlan,
  type SiteOptions,
  startedOn,
} from '../../src/season/index.ts';
import { type Ground, groundUnsaid, type TendedCrop } from '../../src/tend/index.ts';
import { climateOf } from '../weather/climates.ts';

export const startDay = dayNumber(2027, 3, 20);

const mildClimate = climateOf({ latitudeDeg: 52, mean: [4, 5, 7, 10, 13, 16, 18, 18, 15, 11, 7, 4] });
export const dryClimate = climateOf({
  latitudeDeg: 43,
  mean: [0, 3, 8, 12, 16, 21, 25, 24, 18, 11, 5, 0],
  rain: 15,
  wetDays: 3,
  sunshine: 75,
});

/** A crop to tend, sown in spring at 52° north unless said otherwise; `on` counts days from its start. */
export function cropOn(
  on: number,
  other: {
    site?: Partial<SiteOptions>;
    plan?: Partial<PlanForm>;
    ground?: Partial<Ground>;
    seen?: { on: number; wateredLitres: number }[];
    liftedOn?: number;
  } = {},
): TendedCrop {
  const site = openSite({ climate: mildClimate, years: 12, seed: 1, ...other.site });
  const form: PlanForm = {
    ...planDefaults,
    type: 'northern-long',
    start: 'direct-seed',
    startDay,
    ...other.plan,
  };
  const plan = startedOn(form, startDay);
  return {
    site,
    plan,
    summary: runPlan(site, plan),
    ground: { ...groundUnsaid, ...other.ground },
    observations: (other.seen ?? []).map(({ on, wateredLitres }, at) => ({
      id: `seen-${at}`,
      plantingId: 'onions',
      date: formatDay(startDay + on),
      wateredLitres,
    })),
    today: startDay + on,
    liftedOn: other.liftedOn === undefined ? null : startDay + other.liftedOn,
  };
}
