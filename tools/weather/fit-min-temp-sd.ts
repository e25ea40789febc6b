/*
 * Fits the spread of the daily minimum to what monthly means tell, in two ways, and prints both:
 * 1. from the frost nights of climate stations (normal score of the frost share, beyond ±0.5);
 * 2. from daily records, which is what the engine uses (packages/engine/src/climate/min-temp-sd.ts says why).
 *
 *   npx tsx tools/weather/fit-min-temp-sd.ts CLIMATE_NORMALS.csv.gz VEGA_WEATHER.csv WEATHER_SAMPLES_FOLDER
 */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { minTempSd } from '../../packages/engine/src/climate/index.ts';
import { clamp, mean, normalQuantile } from '../../packages/engine/src/math/index.ts';
import { climateFromRecord } from './climate-from-record.ts';
import { dot, leastSquares } from './least-squares.ts';
import { readSamples, readVega } from './read-stations.ts';

const [normalsPath, vegaPath, samplesPath] = process.argv.slice(2);
if (!normalsPath || !vegaPath || !samplesPath) {
  console.error('expected: CLIMATE_NORMALS.csv.gz VEGA_WEATHER.csv WEATHER_SAMPLES_FOLDER');
  process.exit(2);
}

const records = [...readVega(vegaPath), ...readSamples(samplesPath)]
  .map((station) => ({
    name: station.name,
    climate: climateFromRecord(station),
    days: station.record.known.tempMinC,
  }))
  .filter(({ climate }) => climate.minTempSdC.every(Number.isFinite));

fitStations(normalsPath);
fitRecords();

/** Predictors of a month: 1, range, annual swing, mean of the year minus the month's, |latitude|, mean minimum. */
function monthPredictors(temps: number[], ranges: number[], latitudeDeg: number, month: number): number[] {
  const swing = Math.max(...temps) - Math.min(...temps);
  const coldness = mean(temps) - temps[month]!;
  return [1, ranges[month]!, swing, coldness, Math.abs(latitudeDeg) / 10, temps[month]! - ranges[month]! / 2];
}

function fitStations(path: string): void {
  const lines = gunzipSync(readFileSync(path)).toString('utf8').trimEnd().split('\n');
  const header = lines[0]!.split(',');
  const column = (name: string) => header.indexOf(name);
  const first = {
    temp: column('tmean6190_c_01'),
    range: column('trange_c_01'),
    frost: column('frostdays_01'),
  };
  const days = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const rows: number[][] = [];
  const targets: number[] = [];
  const predictors: number[][] = [];
  const shares: { latitude: number; meanMin: number; share: number }[] = [];
  for (const line of lines.slice(1)) {
    const cells = line.split(',').map((cell) => (cell === '' ? Number.NaN : Number(cell)));
    const months = (at: number) => cells.slice(at, at + 12);
    const temps = months(first.temp);
    const ranges = months(first.range);
    const frosts = months(first.frost);
    if (![...temps, ...ranges, ...frosts].every(Number.isFinite)) continue;
    for (let month = 0; month < 12; month++) {
      const meanMin = temps[month]! - ranges[month]! / 2;
      shares.push({
        latitude: Math.abs(cells[column('lat')]!),
        meanMin,
        share: frosts[month]! / days[month]!,
      });
      const score = normalQuantile(clamp(frosts[month]! / days[month]!, 0, 1));
      if (!Number.isFinite(score) || Math.abs(score) <= 0.5) continue;
      // score = (threshold − mean minimum) / σ, and σ = b·x, so the mean minimum is threshold − score × b·x.
      const x = monthPredictors(temps, ranges, cells[column('lat')]!, month).slice(0, 5);
      rows.push([1, ...x.map((value) => -score * value)]);
      targets.push(meanMin);
      predictors.push(x);
    }
  }
  for (const [from, to] of [
    [0, 35],
    [35, 45],
    [45, 55],
    [55, 90],
  ] as const) {
    const near = (low: number) =>
      mean(
        shares
          .filter((s) => s.latitude >= from && s.latitude < to && Math.abs(s.meanMin - low) <= 0.5)
          .map(({ share }) => share),
      ).toFixed(2);
    console.log(
      `latitude ${from}–${to}: frost share ${near(-3)} at a mean minimum of −3 °C, ${near(3)} at +3 °C`,
    );
  }
  const [threshold, ...b] = leastSquares(rows, targets);
  const spreads = predictors.map((x) => clamp(dot(x, b), 1.5, 7)).sort((p, q) => p - q);
  const at = (share: number) => spreads[Math.floor(share * (spreads.length - 1))]!.toFixed(2);
  console.log(`stations: ${rows.length} station months; threshold ${threshold!.toFixed(2)} °C`);
  console.log(
    `  σ = b·(1, range, annual swing, coldness of the month, |latitude|/10): ${b.map((v) => v.toFixed(3)).join(', ')}`,
  );
  console.log(`  σ over the stations: p5 ${at(0.05)}, median ${at(0.5)}, p95 ${at(0.95)} °C`);
  for (const { name, climate } of records) {
    const temps = [...climate.tempMeanC];
    const spread = temps.map((_, month) =>
      clamp(
        dot(monthPredictors(temps, [...climate.tempRangeC], climate.latitudeDeg, month).slice(0, 5), b),
        1.5,
        7,
      ),
    );
    report(name, spread, climate.minTempSdC);
  }
}

function fitRecords(): void {
  const cases = records.flatMap(({ name, climate, days }) =>
    [...climate.minTempSdC].map((spread, month) => ({
      name,
      x: monthPredictors([...climate.tempMeanC], [...climate.tempRangeC], climate.latitudeDeg, month).slice(
        0,
        4,
      ),
      spread,
      // Long records count at most as four years: the places differ more than their sampling errors.
      weight: Math.min(days.reduce((sum, mark) => sum + mark, 0) / 365, 4),
    })),
  );
  const spreadLaw = (part: typeof cases) =>
    leastSquares(
      part.map(({ x }) => x),
      part.map(({ spread }) => Math.log(spread)),
      part.map(({ weight }) => weight),
    );
  const b = spreadLaw(cases);
  console.log(
    `records: log σ = b·(1, range, annual swing, coldness of the month): ${b.map((v) => v.toFixed(4)).join(', ')}`,
  );
  const left = { relation: 0, constant: 0, weight: 0 };
  for (const { name } of records) {
    const others = cases.filter((one) => one.name !== name);
    const without = spreadLaw(others);
    const weights = others.reduce((sum, { weight }) => sum + weight, 0);
    const constant = others.reduce((sum, { spread, weight }) => sum + weight * Math.log(spread), 0) / weights;
    for (const { x, spread, weight } of cases.filter((one) => one.name === name)) {
      left.relation += weight * (Math.log(spread) - dot(x, without)) ** 2;
      left.constant += weight * (Math.log(spread) - constant) ** 2;
      left.weight += weight;
    }
  }
  const percent = (sum: number) => `${(100 * Math.sqrt(sum / left.weight)).toFixed(0)} %`;
  console.log(
    `  error at a place left out: ${percent(left.relation)}; of one constant: ${percent(left.constant)}`,
  );
  for (const { name, climate } of records) report(name, [...minTempSd(climate)], climate.minTempSdC);
}

function report(name: string, fitted: number[], measured: Float64Array): void {
  const bias = mean(fitted.map((value, month) => value - measured[month]!));
  const show = (values: ArrayLike<number>) => Array.from(values, (value) => value.toFixed(1)).join(' ');
  console.log(
    `  ${name.padEnd(14)} fitted ${show(fitted)} | record ${show(measured)} | bias ${bias.toFixed(2)} °C`,
  );
}
