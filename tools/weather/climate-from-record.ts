import { monthLengths, monthOfClimateDay } from '../../packages/engine/src/calendar/index.ts';
import type { MonthlyClimate } from '../../packages/engine/src/climate/index.ts';
import { climateDaysOf, type StationRecord } from './station-record.ts';

/**
 * Monthly climate of a record itself: means, rain, wet days (0.1 mm), frost nights and the spread of the minimum
 * about its month's mean. What daily records rarely hold (humidity, sunshine, wind) is set to a middling value.
 */
export function climateFromRecord(station: StationRecord): MonthlyClimate {
  const { record } = station;
  const { known } = record;
  const climateDays = climateDaysOf(record);
  const monthly = () => new Float64Array(12);
  const [pairs, sumMean, sumRange, sumMin, sumMinSquares, frosts] = [
    monthly(),
    monthly(),
    monthly(),
    monthly(),
    monthly(),
    monthly(),
  ];
  const [rainDays, rain, wet] = [monthly(), monthly(), monthly()];
  for (let at = 0; at < record.days; at++) {
    if (climateDays[at]! < 0) continue;
    const month = monthOfClimateDay(climateDays[at]!);
    if (known.tempMinC[at] && known.tempMaxC[at]) {
      const low = record.tempMinC[at]!;
      const high = record.tempMaxC[at]!;
      pairs[month]!++;
      sumMean[month]! += (low + high) / 2;
      sumRange[month]! += high - low;
      sumMin[month]! += low;
      sumMinSquares[month]! += low * low;
      if (low < 0) frosts[month]!++;
    }
    if (known.rainMm[at]) {
      rainDays[month]!++;
      rain[month]! += record.rainMm[at]!;
      if (record.rainMm[at]! >= 0.1) wet[month]!++;
    }
  }
  const perMonth = (sums: Float64Array, days: Float64Array) =>
    sums.map((sum, month) => (days[month]! > 0 ? (sum / days[month]!) * monthLengths[month]! : 0));
  const means = (sums: Float64Array) => sums.map((sum, month) => sum / pairs[month]!);
  return {
    latitudeDeg: station.latitudeDeg,
    longitudeDeg: station.longitudeDeg,
    elevationM: station.elevationM,
    tempMeanC: means(sumMean),
    tempRangeC: means(sumRange),
    rainMm: perMonth(rain, rainDays),
    wetDays: perMonth(wet, rainDays),
    relativeHumidityPct: monthly().fill(70),
    sunshinePct: monthly().fill(50),
    wind10mMs: monthly().fill(3),
    frostNights: perMonth(frosts, pairs),
    minTempSdC: sumMinSquares.map((squares, month) => {
      const n = pairs[month]!;
      return Math.sqrt((squares - sumMin[month]! ** 2 / n) / (n - 1));
    }),
  };
}
