/*
 * Fits the relations of packages/engine/src/weather/spread.ts on daily records and prints them beside the values in use.
 *
 *   npx tsx tools/weather/fit-spread.ts VEGA_WEATHER.csv WEATHER_SAMPLES_FOLDER
 */
import { climateYearDays, dayOfYear, monthOfClimateDay } from '../../packages/engine/src/calendar/index.ts';
import { mean, standardDeviation } from '../../packages/engine/src/math/index.ts';
import {
  daylightHoursFao,
  extraterrestrialRadiation,
  solarRadiation,
} from '../../packages/engine/src/sky/index.ts';
import { climateFromRecord } from './climate-from-record.ts';
import { dot, leastSquares } from './least-squares.ts';
import { readSamples, readVega } from './read-stations.ts';
import { climateDaysOf, type StationRecord } from './station-record.ts';

const [vegaPath, samplesPath] = process.argv.slice(2);
if (!vegaPath || !samplesPath) {
  console.error('expected: VEGA_WEATHER.csv WEATHER_SAMPLES_FOLDER');
  process.exit(2);
}

type MonthFit = {
  place: string;
  days: number;
  range: number;
  swing: number;
  departure: number;
  wet: number;
  persistence: number;
  rainVariation: number;
  minShift: number;
  rangeShift: number;
  rangeSpread: number;
  minSd: number;
  minSkewness: number;
  correlation: number;
  minOnMin: number;
  minOnRange: number;
  rangeOnMin: number;
  rangeOnRange: number;
};

const stations = [...readVega(vegaPath), ...readSamples(samplesPath)];
const fits = stations.flatMap(monthFits);
relation('wet persistence ~ 1, swing', 'persistence', (f) => [1, f.swing]);
relation('variation of rain above 0.1 mm ~ 1, wet share', 'rainVariation', (f) => [1, f.wet]);
relation('min shift ~ 1, range, swing', 'minShift', (f) => [1, f.range, f.swing]);
relation('range shift ~ 1, range, swing', 'rangeShift', (f) => [1, f.range, f.swing]);
relation('min–range correlation ~ 1, range, swing, departure', 'correlation', (f) => [
  1,
  f.range,
  f.swing,
  f.departure,
]);
relation('skewness of minima ~ 1, swing, σ', 'minSkewness', (f) => [1, f.swing, f.minSd]);
relation('spread of the range ~ 1', 'rangeSpread', () => [1]);
relation('min on min ~ 1, correlation', 'minOnMin', (f) => [1, f.correlation]);
relation('min on range ~ 1, swing', 'minOnRange', (f) => [1, f.swing]);
relation('range on min ~ 1, swing', 'rangeOnMin', (f) => [1, f.swing]);
relation('range on range ~ 1', 'rangeOnRange', () => [1]);
for (const station of stations) clearness(station);

function relation(name: string, target: keyof MonthFit, predictors: (fit: MonthFit) => number[]): void {
  const used = fits.filter((fit) => [fit[target] as number, ...predictors(fit)].every(Number.isFinite));
  const rows = used.map(predictors);
  const targets = used.map((fit) => fit[target] as number);
  // A long record counts at most as ten years: the places differ more than their sampling errors.
  const weights = used.map(({ days }) => Math.min(days, 310));
  const b = leastSquares(rows, targets, weights);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const squares = rows.reduce((sum, row, at) => sum + weights[at]! * (targets[at]! - dot(row, b)) ** 2, 0);
  console.log(
    `${name}: ${b.map((v) => v.toFixed(4)).join(', ')}; error ${Math.sqrt(squares / total).toFixed(3)}`,
  );
}

/** What one record says about each month, wet and dry days apart, the season taken out by two harmonics. */
function monthFits(station: StationRecord): MonthFit[] {
  const { record } = station;
  const { known } = record;
  const places = climateDaysOf(record);
  const climate = climateFromRecord(station);
  const swing = Math.max(...climate.tempMeanC) - Math.min(...climate.tempMeanC);
  const whole = (at: number) =>
    Boolean(places[at]! >= 0 && known.tempMinC[at] && known.tempMaxC[at] && known.rainMm[at]);
  const isWet = (at: number) => (known.rainMm[at] && record.rainMm[at]! >= 0.1 ? 1 : 0);
  const days = Array.from({ length: record.days }, (_, at) => at).filter(whole);
  const seasonOf = (value: (at: number) => number) => {
    const b =
      days.length > 0
        ? leastSquares(
            days.map((at) => harmonics(places[at]!)),
            days.map(value),
          )
        : [];
    return (at: number) => dot(harmonics(places[at]!), b);
  };
  const minSeason = seasonOf((at) => record.tempMinC[at]!);
  const rangeOf = (at: number) => record.tempMaxC[at]! - record.tempMinC[at]!;
  const rangeSeason = seasonOf(rangeOf);
  const minZ = new Float64Array(record.days).fill(Number.NaN);
  const rangeZ = new Float64Array(record.days).fill(Number.NaN);
  const shifts = Array.from({ length: 12 }, (_, month) => {
    const own = days.filter((at) => monthOfClimateDay(places[at]!) === month);
    const kinds = [own.filter((at) => !isWet(at)), own.filter(isWet)];
    const minDepartures = kinds.map((kind) => kind.map((at) => record.tempMinC[at]! - minSeason(at)));
    const ranges = kinds.map((kind) => kind.map((at) => rangeOf(at) / rangeSeason(at)));
    const sd = standardDeviation(minDepartures.flat());
    const rests = kinds.map((_, kind) =>
      minDepartures[kind]!.map((value) => value - mean(minDepartures[kind]!)),
    );
    const rangeRests = kinds.map((_, kind) => ranges[kind]!.map((value) => value / mean(ranges[kind]!) - 1));
    const [restSd, rangeSd] = [standardDeviation(rests.flat()), standardDeviation(rangeRests.flat())];
    kinds.forEach((kind, k) => {
      kind.forEach((at, i) => {
        minZ[at] = rests[k]![i]! / restSd;
        rangeZ[at] = rangeRests[k]![i]! / rangeSd;
      });
    });
    const all = minDepartures.flat();
    const centre = mean(all);
    return {
      minSd: sd,
      minSkewness: mean(all.map((value) => ((value - centre) / sd) ** 3)),
      minShift: (mean(minDepartures[0]!) - mean(minDepartures[1]!)) / sd,
      rangeShift: mean(ranges[0]!) - mean(ranges[1]!),
      rangeSpread: rangeSd,
    };
  });
  return shifts.map((shift, month) => {
    const rainAt = Array.from({ length: record.days - 1 }, (_, at) => at + 1).filter(
      (at) =>
        places[at]! >= 0 &&
        monthOfClimateDay(places[at]!) === month &&
        known.rainMm[at] &&
        known.rainMm[at - 1],
    );
    const share = (all: number[]) => all.filter(isWet).length / all.length;
    const beyond = rainAt.filter(isWet).map((at) => record.rainMm[at]! - 0.1);
    const pairs = days.filter(
      (at) =>
        at > 0 &&
        monthOfClimateDay(places[at]!) === month &&
        Number.isFinite(minZ[at - 1]! + rangeZ[at - 1]!),
    );
    const before = pairs.map((at) => [minZ[at - 1]!, rangeZ[at - 1]!]);
    const carry = (values: Float64Array) =>
      pairs.length > 20
        ? leastSquares(
            before,
            pairs.map((at) => values[at]!),
          )
        : [Number.NaN, Number.NaN];
    const [minOnMin, minOnRange] = carry(minZ);
    const [rangeOnMin, rangeOnRange] = carry(rangeZ);
    return {
      place: station.name,
      days: rainAt.length,
      range: climate.tempRangeC[month]!,
      swing,
      departure: climate.tempMeanC[month]! - mean(climate.tempMeanC),
      wet: share(rainAt),
      persistence: share(rainAt.filter((at) => isWet(at - 1))) - share(rainAt.filter((at) => !isWet(at - 1))),
      rainVariation: standardDeviation(beyond) / mean(beyond),
      ...shift,
      correlation: mean(pairs.map((at) => minZ[at]! * rangeZ[at]!)),
      minOnMin: minOnMin!,
      minOnRange: minOnRange!,
      rangeOnMin: rangeOnMin!,
      rangeOnRange: rangeOnRange!,
    };
  });
}

function harmonics(climateDay: number): number[] {
  const angle = (2 * Math.PI * (climateDay + 0.5)) / climateYearDays;
  return [1, Math.sin(angle), Math.cos(angle), Math.sin(2 * angle), Math.cos(2 * angle)];
}

/** Clearness of dry and wet days, from radiation or sunshine hours, where a record has either. */
function clearness({ name, record, latitudeDeg, sunshineHours }: StationRecord): void {
  const values: { at: number; k: number; wet: boolean }[] = [];
  for (let at = 0; at < record.days; at++) {
    if (!record.known.rainMm[at] || !record.known.tempMinC[at] || !record.known.tempMaxC[at]) continue;
    const day = dayOfYear(record.firstDay + at);
    const sun = sunshineHours?.[at] ?? Number.NaN;
    const k = record.known.solarMJ[at]
      ? record.solarMJ[at]! / extraterrestrialRadiation(latitudeDeg, day)
      : solarRadiation(1, Math.min(1, sun / daylightHoursFao(latitudeDeg, day)));
    if (Number.isFinite(k)) values.push({ at, k, wet: record.rainMm[at]! >= 0.1 });
  }
  if (values.length < 300) return;
  const season = leastSquares(
    values.map(({ at }) => harmonics(climateDaysOf(record)[at]!)),
    values.map(({ k }) => k),
  );
  const places = climateDaysOf(record);
  const departures = values.map(({ at, k }) => k - dot(harmonics(places[at]!), season));
  const kinds = [false, true].map((wet) => mean(departures.filter((_, i) => values[i]!.wet === wet)));
  const rests = departures.map((value, i) => value - kinds[values[i]!.wet ? 1 : 0]!);
  const ranges = values.map(({ at }) => record.tempMaxC[at]! - record.tempMinC[at]!);
  const rangeKinds = [false, true].map((wet) => mean(ranges.filter((_, i) => values[i]!.wet === wet)));
  const rangeRests = ranges.map((value, i) => value - rangeKinds[values[i]!.wet ? 1 : 0]!);
  const sd = standardDeviation(rests);
  const together = mean(rests.map((value, i) => value * rangeRests[i]!)) / sd / standardDeviation(rangeRests);
  const memory = mean(rests.slice(1).map((value, i) => value * rests[i]!)) / sd ** 2;
  console.log(
    `clearness at ${name}: dry − wet ${(kinds[0]! - kinds[1]!).toFixed(3)}, spread ${sd.toFixed(3)}, with the range ${together.toFixed(2)}, lag-1 ${memory.toFixed(2)}`,
  );
}
