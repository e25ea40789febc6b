import { mean, standardDeviation } from '../../packages/engine/src/math/index.ts';
import { weatherYears } from '../../packages/engine/src/weather/index.ts';
import { climateFromRecord } from './climate-from-record.ts';
import { recordStatistics, tableOfRecord, tableOfSeries } from './record-statistics.ts';
import { type StationRecord, yearsOf } from './station-record.ts';

export type Comparison = {
  statistic: string;
  /** One entry a month, or one for the whole year. */
  record: number[];
  generated: number[];
  /** (record − generated) / sampling error of a record of this length. */
  z: number[];
};

/**
 * Statistics of whole years of a record against weather generated from the record's own monthly climate.
 * Sampling error: the standard deviation of the same statistic over that many generated records of the same length.
 */
export function compareStatistics(
  station: StationRecord,
  firstYear: number,
  lastYear: number,
  replicates: number,
  seed: number,
): Comparison[] {
  const part = { ...station, record: yearsOf(station.record, firstYear, lastYear) };
  const years = lastYear - firstYear + 1;
  const series = weatherYears(climateFromRecord(part), years * replicates, seed);
  const samples = Array.from({ length: replicates }, (_, at) =>
    recordStatistics(tableOfSeries(series, at * years, years)),
  );
  return Object.entries(recordStatistics(tableOfRecord(part.record))).map(([statistic, record]) => {
    const drawn = record.map((_, at) => samples.map((sample) => sample[statistic]![at]!));
    const generated = drawn.map((values) => mean(values));
    const z = record.map((value, at) => (value - generated[at]!) / standardDeviation(drawn[at]!));
    return { statistic, record, generated, z };
  });
}
