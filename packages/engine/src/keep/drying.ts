import { meanSaturationVapourPressure, saturationVapourPressure, windAt2m } from '../bed/index.ts';
import { climateDayOf, climateYearDays, type DayNumber, monthOfClimateDay } from '../calendar/index.ts';
import type { MonthlyClimate } from '../climate/index.ts';
import { evenNormals, quantileSorted, randomSource } from '../math/index.ts';
import { calendarYear, driverIndex, type Plan, type Site } from '../season/index.ts';
import { weatherYears } from '../weather/index.ts';
import {
  bulbLossPerDay,
  neckDryingPerDay,
  neckWeightShare,
  outdoorDeficitKPa,
  wettedAgain,
} from './drying-air.ts';

/** Where onions dry once they are lifted. */
export const dryingPlaces = ['outdoors', 'under-roof', 'warm-room'] as const;
/** One of {@link dryingPlaces}. */
export type DryingPlace = (typeof dryingPlaces)[number];

/** Days from lifting until necks are tight, 1, 5 and 9 of ten years below; null where they don't get there. */
export type DryingDays = {
  place: DryingPlace;
  p10: number | null;
  p50: number | null;
  p90: number | null;
  /** Share of the weight lost by then, 0…1. */
  lossShare: number;
};

/** Weather of several seasons, by day; `from` says where the day of lifting stands in each. */
export type LiftedWeather = {
  seasons: number;
  /** The day of lifting in a season. */
  from: (season: number) => number;
  tempMinC: ArrayLike<number>;
  tempMaxC: ArrayLike<number>;
  rainMm: ArrayLike<number>;
};

/** What is not dry by then stays undry, days. */
export const longestDrying = 60;

/** Of the wind at 2 m, what reaches bulbs on the ground, and under a roof without walls (memory, adjustable). */
const windShare = { outdoors: 0.3, 'under-roof': 0.25 } as const;
/** A room of 22–25 °C with a fan that keeps air moving at a breath, °C and m/s (memory, adjustable). */
const warmRoom = { tempC: 24, airMs: 0.5 } as const;
/** Crops differ by the thickness of their necks: standard deviation of the logarithm of their pace (memory, adjustable). */
const cropSpread = 0.25;
/** Years tried where no site has any. */
const usualYears = 30;

/** How long bulbs lifted on a day take to dry in a place; weather left out: that of generated years. */
export function dryingDays(
  climate: MonthlyClimate,
  place: DryingPlace,
  liftedOn: DayNumber,
  weather: LiftedWeather = usualWeather(climate, liftedOn),
): DryingDays {
  const paces = evenNormals(weather.seasons, randomSource(0x647279)).map((z) => Math.exp(cropSpread * z));
  const airOf = airIn(place, climate);
  const days: number[] = [];
  const losses: number[] = [];
  for (let season = 0; season < weather.seasons; season++) {
    const at = weather.from(season);
    let dried = 0;
    let mass = 1;
    let day = 0;
    for (; day < longestDrying && dried < 1; day++) {
      const rainMm = weather.rainMm[at + day];
      const month = monthOfClimateDay(climateDayOf(liftedOn + day));
      const { tempC, deficitKPa } = airOf.on(
        weather.tempMinC[at + day],
        weather.tempMaxC[at + day],
        month,
        rainMm,
      );
      mass *= 1 - bulbLossPerDay(tempC, deficitKPa);
      const wetted = place === 'outdoors' ? wettedAgain(rainMm) : 0;
      dried =
        wetted > 0
          ? Math.max(0, dried - wetted)
          : dried + paces[season] * neckDryingPerDay(deficitKPa, airOf.airMs[month]);
    }
    days.push(dried >= 1 ? day : Number.POSITIVE_INFINITY);
    losses.push(1 - mass * (1 - neckWeightShare * Math.min(1, dried)));
  }
  const sorted = Float64Array.from(days).sort();
  const after = (share: number) => {
    // no half way to a day that never comes
    const value = sorted[Math.round(share * (sorted.length - 1))];
    return Number.isFinite(value) ? value : null;
  };
  const lossShare = quantileSorted(Float64Array.from(losses).sort(), 0.5);
  return { place, p10: after(0.1), p50: after(0.5), p90: after(0.9), lossShare };
}

/** The same from the weather that a crop meets: of record and forecast as far as they go. */
export function dryingOf(site: Site, plan: Plan, place: DryingPlace, liftedOn: DayNumber): DryingDays {
  return dryingDays(site.climate, place, liftedOn, weatherMetFrom(site, plan, liftedOn));
}

/** The weather of a crop's seasons from a day on. */
export function weatherMetFrom(site: Site, plan: Plan, day: DayNumber): LiftedWeather {
  const { tempMinC, tempMeanC, rainMm } = site.generated('none', calendarYear(plan.startDay));
  return {
    seasons: site.years,
    from: (season) => driverIndex(site, plan.startDay, season) + day - plan.startDay,
    tempMinC,
    tempMaxC: tempMeanC.map((mean, at) => 2 * mean - tempMinC[at]),
    rainMm,
  };
}

function usualWeather(climate: MonthlyClimate, liftedOn: DayNumber): LiftedWeather {
  const at = climateDayOf(liftedOn);
  const series = weatherYears(climate, usualYears + 1, 1);
  return { ...series, seasons: usualYears, from: (season) => season * climateYearDays + at };
}

/** Air by month: its speed at the bulbs; its warmth on a day, and what it lacks of vapour then. */
function airIn(place: DryingPlace, climate: MonthlyClimate) {
  const vapourKPa = climate.relativeHumidityPct.map((percent, month) => {
    const half = climate.tempRangeC[month] / 2;
    const mean = climate.tempMeanC[month];
    return (meanSaturationVapourPressure(mean - half, mean + half) * percent) / 100;
  });
  if (place === 'warm-room') {
    return {
      airMs: vapourKPa.map(() => warmRoom.airMs),
      on: (_low: number, highC: number, month: number) => {
        const tempC = Math.max(warmRoom.tempC, highC);
        const full = saturationVapourPressure(tempC);
        return { tempC, deficitKPa: Math.max(0.03 * full, full - vapourKPa[month]) };
      },
    };
  }
  return {
    airMs: climate.wind10mMs.map((wind) => windShare[place] * windAt2m(wind, 10)),
    on: (lowC: number, highC: number, month: number, rainMm: number) => ({
      tempC: (lowC + highC) / 2,
      deficitKPa: outdoorDeficitKPa(lowC, highC, vapourKPa[month], rainMm),
    }),
  };
}
