import { type MonthlyClimate, minTempSd } from '../../packages/engine/src/climate/index.ts';
import { mean, standardDeviation } from '../../packages/engine/src/math/index.ts';
import { weatherYears } from '../../packages/engine/src/weather/index.ts';
import { climateFromRecord } from './climate-from-record.ts';
import { type MonthStatistics, recordStatistics, tableOfRecord, tableOfSeries } from './record-statistics.ts';
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
  const climate = climateFromRecord(part);
  const samplesOf = (driver: MonthlyClimate) => {
    const series = weatherYears(driver, years * replicates, seed);
    return Array.from({ length: replicates }, (_, at) =>
      recordStatistics(tableOfSeries(series, at * years, years)),
    );
  };
  const given = samplesOf(climate);
  const related = samplesOf({ ...climate, minTempSdC: minTempSd(climate) });
  const record = recordStatistics(tableOfRecord(part.record));
  const rows = Object.keys(record).map((statistic) => compared(statistic, statistic, record, given));
  return [...rows, compared(relationSpread, 'σ of minima, °C', record, related)];
}

/** Name of the row whose generated years have the engine's relation for the spread of minima, not the record's own. */
const relationSpread = 'σ of minima by the relation, °C';

function compared(
  name: string,
  statistic: string,
  recordStatistic: MonthStatistics,
  samples: MonthStatistics[],
): Comparison {
  const record = recordStatistic[statistic]!;
  const drawn = record.map((_, at) => samples.map((sample) => sample[statistic]![at]!));
  const generated = drawn.map((values) => mean(values));
  const z = record.map((value, at) => (value - generated[at]!) / standardDeviation(drawn[at]!));
  return { statistic: name, record, generated, z };
}
