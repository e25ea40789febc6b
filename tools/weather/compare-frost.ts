import { climateYearDays, dayNumber } from '../../packages/engine/src/calendar/index.ts';
import { quantileSorted, randomSource } from '../../packages/engine/src/math/index.ts';
import {
  applyRecord,
  type FrostStatistics,
  frostStatistics,
  meanYear,
  type WeatherSeries,
  weatherYears,
} from '../../packages/engine/src/weather/index.ts';
import { climateFromRecord } from './climate-from-record.ts';
import { type StationRecord, yearsOf } from './station-record.ts';

export type FrostComparison = {
  figure: string;
  record: number | null;
  generated: number | null;
  /**
   * 95 % interval that must hold the other figure; null where half the draws have none. From eight winters on it is
   * the record's, its winters drawn again with replacement, and must hold the generated figure; below that too few
   * winters tell their own error, and it is that of generated records of the same length and must hold the record's.
   */
  interval: readonly [number, number] | null;
  intervalOf: 'record' | 'generated';
  isInside: boolean;
};

const draws = 400;

/** Frost figures of whole years of a record against generated years; dates as days after midsummer. */
export function compareFrost(
  station: StationRecord,
  firstYear: number,
  lastYear: number,
  thresholdC: number,
  seed: number,
): FrostComparison[] {
  const part = { ...station, record: yearsOf(station.record, firstYear, lastYear) };
  const climate = climateFromRecord(part);
  const years = lastYear - firstYear + 1;
  const smooth = repeated(meanYear(climate), years);
  // Unknown days become mean days, which are no frosts.
  const real = applyRecord(smooth, dayNumber(firstYear, 1, 1), part.record);
  const { latitudeDeg } = station;
  const figures = (series: WeatherSeries) =>
    figuresOf(frostStatistics(series, latitudeDeg, thresholdC), latitudeDeg);
  const record = figures(real);
  const generated = figures(weatherYears(climate, 600, seed));

  const random = randomSource(seed);
  const intervalOf = years > 8 ? 'record' : 'generated';
  const resampled = Array.from({ length: draws }, (_, draw) =>
    figures(
      intervalOf === 'record'
        ? winterDraw(real, latitudeDeg, () => random.uniform())
        : weatherYears(climate, years, seed + 1 + draw),
    ),
  );
  return Object.keys(record).map((figure) => {
    const values = resampled
      .map((draw) => draw[figure])
      .filter((value) => value !== null && value !== undefined);
    values.sort((a, b) => a - b);
    const interval =
      values.length > draws / 2
        ? ([quantileSorted(values, 0.025), quantileSorted(values, 0.975)] as const)
        : null;
    const held = (intervalOf === 'record' ? generated : record)[figure] ?? null;
    const isInside = interval !== null && held !== null && held >= interval[0] && held <= interval[1];
    return {
      figure,
      record: record[figure] ?? null,
      generated: generated[figure] ?? null,
      interval,
      intervalOf,
      isInside,
    };
  });
}

const midsummer = (latitudeDeg: number) => (latitudeDeg < 0 ? 0 : 182);

function figuresOf(frost: FrostStatistics, latitudeDeg: number): Record<string, number | null> {
  const after = (climateDay: number | undefined) =>
    climateDay === undefined
      ? null
      : (climateDay - midsummer(latitudeDeg) + climateYearDays) % climateYearDays;
  const { lastSpring, firstAutumn } = frost;
  return {
    'winters with a frost, %': 100 * lastSpring.share,
    'first autumn frost, p10': after(firstAutumn.days?.p10),
    'first autumn frost, p50': after(firstAutumn.days?.p50),
    'first autumn frost, p90': after(firstAutumn.days?.p90),
    'last spring frost, p10': after(lastSpring.days?.p10),
    'last spring frost, p50': after(lastSpring.days?.p50),
    'last spring frost, p90': after(lastSpring.days?.p90),
    'frost-free days, median': frost.frostFreeDays,
    'mean annual minimum, °C': frost.meanAnnualMinimumC,
  };
}

function repeated(year: WeatherSeries, years: number): WeatherSeries {
  const repeat = (values: Float64Array) => {
    const all = new Float64Array(values.length * years);
    for (let at = 0; at < years; at++) all.set(values, at * values.length);
    return all;
  };
  const { tempMinC, tempMaxC, rainMm, solarMJ } = year;
  return {
    days: year.days * years,
    tempMinC: repeat(tempMinC),
    tempMaxC: repeat(tempMaxC),
    rainMm: repeat(rainMm),
    solarMJ: repeat(solarMJ),
  };
}

/** The same winters, midsummer to midsummer, drawn with replacement. */
function winterDraw(series: WeatherSeries, latitudeDeg: number, uniform: () => number): WeatherSeries {
  const start = midsummer(latitudeDeg);
  const winters = Math.floor((series.days - start) / climateYearDays);
  const drawn = { ...series, tempMinC: series.tempMinC.slice() };
  for (let winter = 0; winter < winters; winter++) {
    const from = start + Math.floor(uniform() * winters) * climateYearDays;
    drawn.tempMinC.set(
      series.tempMinC.subarray(from, from + climateYearDays),
      start + winter * climateYearDays,
    );
  }
  return drawn;
}
