import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it, test } from 'vitest';
import { minTempSd } from '../../packages/engine/src/climate/index.ts';
import { mean } from '../../packages/engine/src/math/index.ts';
import { climateFromRecord } from './climate-from-record.ts';
import { compareFrost } from './compare-frost.ts';
import { compareStatistics } from './compare-statistics.ts';
import { readSamples, readVega } from './read-stations.ts';

/*
 * Generated weather, driven by a record's own monthly climate, against the record. Truth: daily weather of Seattle and
 * New York 2012–2015 in vega-datasets (NOAA). Sampling error: the standard deviation of each figure over 200 generated
 * records of the same length; z is the record's distance in that unit.
 */
const vegaFile = fileURLToPath(new URL('../../node_modules/vega-datasets/data/weather.csv', import.meta.url));
const vega = readVega(vegaFile);
const seed = 7;

describe.each(vega.map((station) => [station.name, station] as const))('%s 2012–2015', (name, station) => {
  const rows = compareStatistics(station, 2012, 2015, 200, seed);
  const figure = (start: string) =>
    rows.filter(({ statistic }) => statistic.startsWith(start)).flatMap(({ z }) => z);
  const within = (z: number[], limit: number) => z.filter((value) => Math.abs(value) <= limit).length;

  // Wet-day shares and spreads of minima drive the generator here, so for them this says that it keeps what it is given.
  it('has wet-day shares and wet and dry spells within sampling error', () => {
    const z = [...figure('wet-day share'), ...figure('mean wet spell'), ...figure('mean dry spell')];
    expect(z.length).toBe(14);
    expect(within(z, 2)).toBe(14);
  });

  it('has spreads of minima within sampling error in every month', () => {
    expect(within(figure('σ of minima, °C'), 2)).toBe(12);
  });

  it('has spreads of maxima within three sampling errors, one month apart', () => {
    // New York's Augusts of 2012–2015 had 2.2 °C where the relation for humid and dry summers alike gives 3.4.
    expect(within(figure('σ of maxima'), 3)).toBeGreaterThanOrEqual(name === 'New York' ? 11 : 12);
    expect(within(figure('σ of maxima'), 2)).toBeGreaterThanOrEqual(9);
  });

  it('has day-to-day correlations within three sampling errors, nearly all within two', () => {
    const z = [...figure('lag-1')];
    expect(z.length).toBe(24);
    expect(within(z, 3)).toBeGreaterThanOrEqual(23);
    // Seattle remembers longer than the generator: its known gap, stated in docs/weather-years.md.
    expect(within(z, 2)).toBeGreaterThanOrEqual(name === 'Seattle' ? 16 : 24);
  });

  it('has monthly means that differ between years as much as the record’s', () => {
    const z = figure('SD between years');
    expect(z.length).toBe(24);
    // Chance alone leaves about one outside; Seattle has four (its Februaries and Junes), New York three.
    expect(within(z, 2)).toBeGreaterThanOrEqual(20);
    // Both signs must occur, or the years are all too alike or all too different.
    expect(Math.abs(mean(z))).toBeLessThan(1);
  });

  it('has frost dates and lowest minima like generated records of its length', () => {
    const rows = compareFrost(station, 2012, 2015, 0, seed);
    expect(rows.length).toBe(9);
    expect(rows.filter(({ isInside }) => !isInside).map(({ figure }) => figure)).toEqual([]);
  });

  it('has spreads of minima near the relation’s, as near as places left out of its fit', () => {
    const climate = climateFromRecord(station);
    const fitted = minTempSd(climate);
    const logErrors = [...fitted].map((value, month) => Math.log(value / climate.minTempSdC[month]!));
    expect(Math.sqrt(mean(logErrors.map((error) => error * error)))).toBeLessThan(0.33);
    expect(Math.abs(mean(logErrors))).toBeLessThan(0.15);
  });
});

const shared = process.env.NECKFALL_SHARED;

describe('longer records of the weather samples', () => {
  const samples = shared ? readSamples(join(shared, 'data', 'weather-samples')) : [];
  const named = (name: string) => samples.find((station) => station.name === name)!;

  test.skipIf(!shared)(
    'frost dates of Buenos Aires 2005–2021 hold the generated ones in their 95 % bootstrap intervals',
    () => {
      for (const threshold of [0, 2]) {
        const rows = compareFrost(named('Buenos Aires'), 2005, 2021, threshold, seed);
        expect(rows.filter(({ isInside }) => !isInside).map(({ figure }) => figure)).toEqual([]);
        expect(rows.every(({ intervalOf }) => intervalOf === 'record')).toBe(true);
      }
    },
  );

  test.skipIf(!shared)('Melbourne 2014–2021: nights below 4 °C fall like those of generated records', () => {
    const rows = compareFrost(named('Melbourne'), 2014, 2021, 4, seed);
    expect(rows.filter(({ isInside }) => !isInside).map(({ figure }) => figure)).toEqual([]);
  });

  test.skipIf(!shared)('Adelaide 1940–1978: nights below 4 °C, dates within three weeks', () => {
    // Inside the bootstrap interval only for about half the figures: the cold tail of spring is still too long there.
    for (const { figure, record, generated } of compareFrost(named('Adelaide'), 1940, 1978, 4, seed)) {
      if (figure.includes('°C')) expect(Math.abs(record! - generated!)).toBeLessThan(0.6);
      else expect(Math.abs(record! - generated!)).toBeLessThan(figure.endsWith('p90') ? 35 : 23);
    }
  });

  test.skipIf(!shared)('Adelaide 1940–1978: monthly means differ between years as in the record', () => {
    const rows = compareStatistics(named('Adelaide'), 1940, 1978, 20, seed);
    const ratios = rows
      .filter(({ statistic }) => statistic.startsWith('SD between years'))
      .flatMap(({ record, generated }) => record.map((value, month) => generated[month]! / value));
    expect(Math.abs(mean(ratios) - 1)).toBeLessThan(0.12);
  });
});
