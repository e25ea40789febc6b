import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { dayNumber } from '../../packages/engine/src/calendar/index.ts';
import { pestDates, pests } from '../../packages/engine/src/jobs/index.ts';
import { openSite } from '../../packages/engine/src/season/index.ts';
import { climateOf } from '../../test/season/places.ts';
import { readSamples, readVega } from './read-stations.ts';
import type { StationRecord } from './station-record.ts';

/*
 * Days of pests in weather that came, against the published sums counted by hand in the degrees they were printed in:
 * onion fly 680, 1950 and 3230 °F d above 40 °F (University of Wisconsin Extension XHT1087), bean seed fly 360, 1080 and
 * 1800 °F d above 39 °F and up to 84 °F (University of Minnesota, after Funderburk et al. 1984), both of the daily mean
 * from 1 January. Records: NOAA days of Seattle and New York in vega-datasets; Toronto of Environment Canada where the
 * folder of samples is there.
 */
const vegaFile = fileURLToPath(new URL('../../node_modules/vega-datasets/data/weather.csv', import.meta.url));
const shared = process.env.NECKFALL_SHARED;
const toronto = shared
  ? readSamples(join(shared, 'data/weather-samples')).filter(({ name }) => name === 'Toronto')
  : [];

const fahrenheit = (tempC: number) => tempC * 1.8 + 32;

/** First days, by their number from 1 January, on which the sums stood; null: not in that year. */
function byHand({ record }: StationRecord, year: number, baseF: number, upperF: number, sums: number[]) {
  const first = dayNumber(year, 1, 1) - record.firstDay;
  let total = 0;
  const days: number[] = [];
  for (let day = 0; day < 365 && days.length < sums.length; day++) {
    const high = Math.min(fahrenheit(record.tempMaxC[first + day]), upperF);
    const mean = (high + fahrenheit(record.tempMinC[first + day])) / 2;
    total += Math.max(0, mean - baseF);
    while (days.length < sums.length && total >= sums[days.length]) days.push(day);
  }
  return days;
}

/** Sums in °C d were rounded from those in °F d, and the base with them: a day or two in summer. */
const roundingDays = 3;

test.each([
  ...readVega(vegaFile).map((station) => [station.name, 2013, station] as const),
  ...toronto.map((station) => [station.name, 2015, station] as const),
])('%s %i: flights come on the days of the published sums', (_, year, station) => {
  const { latitudeDeg, longitudeDeg, record } = station;
  const site = openSite({ climate: climateOf(latitudeDeg, longitudeDeg), years: 2, seed: 1, record });
  const start = dayNumber(year, 4, 1);
  const printed = {
    onionFly: byHand(station, year, 40, Number.POSITIVE_INFINITY, [680, 1950, 3230]),
    seedcornFly: byHand(station, year, 39, 84, [360, 1080, 1800]),
  };
  for (const name of ['onionFly', 'seedcornFly'] as const) {
    expect(printed[name].length, name).toBeGreaterThan(1);
    const [winter] = pestDates(site, start, pests[name]);
    for (const [at, day] of printed[name].entries()) {
      const { days } = winter[at];
      // one record: all seasons meet the same days
      expect(days?.p10).toBe(days?.p90);
      expect(
        Math.abs((days?.p50 ?? 0) - (dayNumber(year, 1, 1) + day)),
        `${name} ${at + 1}`,
      ).toBeLessThanOrEqual(roundingDays);
    }
  }
});

test.runIf(toronto.length === 0)('Toronto is left out: the folder of weather samples is not here', () => {
  expect(shared).toBeUndefined();
});
