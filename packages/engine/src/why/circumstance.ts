import { climateDayOf, type DayNumber, monthOfClimateDay } from '../calendar/index.ts';
import { mildewShares, pestDates, pests } from '../jobs/index.ts';
import { dryingDays } from '../keep/index.ts';
import { mean } from '../math/index.ts';
import { ramp, startWays } from '../plant/index.ts';
import type { Site } from '../season/index.ts';
import type { SeenCause } from './causes.ts';
import type { Evidence } from './evidence.ts';
import type { Trial } from './season-facts.ts';
import type { GrownSo } from './what-if.ts';

/** How much the place and the season favour a cause: 1 as anywhere, 0 not possible; with what shows it. */
export type Circumstance = { factor: number; shown: readonly Evidence[] };

const anywhere: Circumstance = { factor: 1, shown: [] };
const impossible: Circumstance = { factor: 0, shown: [] };

/** Where tops never fall, a crop is told of from its start for so long, days. */
const usualSeason = 150;

/** What climate and dates say of a cause that no run can know. Factors are memory, adjustable; the warmth each wants as named. */
export function circumstanceOf(cause: SeenCause, { site, plan }: Trial, grown: GrownSo): Circumstance {
  const end = grown.neckFall ?? plan.startDay + usualSeason;
  const growing = grown.onset === null ? end - 45 : (grown.onset + end) / 2;
  switch (cause) {
    case 'old-seed':
    case 'dry-seedbed':
    case 'damping-off':
      return startWays[plan.start].from === 'seed' ? anywhere : impossible;
    case 'onion-fly':
      return flies(site, plan.startDay, end);
    case 'downy-mildew': {
      const shares = mildewShares(site, plan.startDay, plan.startDay + 30, end);
      const most = shares.reduce((a, b) => Math.max(a, b), 0);
      return { factor: 0.3 + 1.2 * most, shown: [{ code: 'wet-spells', tenths: Math.round(10 * most) }] };
    }
    case 'thrips': {
      const { tempC, rainMm } = airAbout(site, growing);
      const factor = 0.4 + 0.8 * ramp(tempC, 14, 22) + 0.4 * ramp(rainMm, 80, 30);
      return { factor, shown: factor > 1 ? [{ code: 'hot-and-dry', tempC, rainMm }] : [] };
    }
    // seen: OMAFRA IPM (18–30 °C with long dew)
    case 'purple-blotch':
      return warmth(site, growing, 15, 21, 0.4);
    case 'ozone':
      return warmth(site, growing, 16, 23, 0.4);
    // seen: PNW Plant Disease Handbook (soil of 24–28 °C)
    case 'pink-root':
      return soilWarmth(site, growing, ramp(soilAbout(site, growing), 16, 24));
    // seen: UC IPM (10–24 °C, checked above 26)
    case 'white-rot':
      return soilWarmth(site, growing, 1 - ramp(soilAbout(site, growing), 23, 27));
    // seen: Cornell Coop. Ext. (high 20s to 30s °C with sun)
    case 'sun-on-lifted-bulbs':
      return warmth(site, end, 16, 23, 0.4);
    case 'black-mould':
      return warmth(site, end, 16, 24, 0.4);
    case 'badly-dried': {
      const { p50 } = dryingDays(site.climate, 'outdoors', end);
      const days = p50 ?? 60;
      return {
        factor: 0.6 + 0.9 * ramp(days, 8, 25),
        shown: days > 14 ? [{ code: 'drying-took', days }] : [],
      };
    }
    default:
      return anywhere;
  }
}

/** Flights of the onion fly that meet the crop. */
function flies(site: Site, startDay: DayNumber, end: DayNumber): Circumstance {
  const dates = pestDates(site, startDay, pests.onionFly).flat();
  const met = dates.find(({ share, days }) => share > 0.5 && days && days.p50 > startDay && days.p50 < end);
  if (!met?.days) return { factor: 0.3, shown: [] };
  return { factor: 1.1, shown: [{ code: 'flies-came', day: met.days.p50 }] };
}

function airAbout(site: Site, day: DayNumber): { tempC: number; rainMm: number } {
  const { tempMeanC, rainMm } = site.climate;
  const month = monthOfClimateDay(climateDayOf(Math.round(day)));
  return { tempC: tempMeanC[month], rainMm: rainMm[month] };
}

function soilAbout(site: Site, day: DayNumber): number {
  const at = climateDayOf(Math.round(day));
  return mean(site.mean('none').soilMeanC.subarray(Math.max(0, at - 15), at + 15));
}

/** Likelier the warmer it is, from the factor `least` on. */
function warmth(site: Site, day: DayNumber, fromC: number, fullC: number, least: number): Circumstance {
  const { tempC } = airAbout(site, day);
  const factor = least + (1.3 - least) * ramp(tempC, fromC, fullC);
  return { factor, shown: factor > 1 ? [{ code: 'mean-warmth', tempC }] : [] };
}

function soilWarmth(site: Site, day: DayNumber, suits: number): Circumstance {
  const factor = 0.5 + 0.7 * suits;
  return { factor, shown: suits > 0.5 ? [{ code: 'warm-soil', tempC: soilAbout(site, day) }] : [] };
}
