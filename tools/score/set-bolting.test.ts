import { describe, expect, it } from 'vitest';
import { dayNumber, defaultPlantValues, planDefaults, runnerOf } from '../../packages/engine/src/index.ts';
import { nominalYear } from './calendar-rows.ts';
import { scoreSite } from './sites.ts';

// Sapporo 1949–50, Sapporo-ki, planted 25 April (hro.or.jp 1950012): share of plants that bolted by set diameter.
// Place from memory; diameters are the middles of the printed classes. Allowed: 15 points.
const bolted: [diameterMm: number, share: number][] = [
  [10, 0.006],
  [14.5, 0.224],
  [21, 0.714],
  [27, 0.967],
];

describe('cold-stored sets at Sapporo', () => {
  const site = scoreSite({ latitudeDeg: 43.08, longitudeDeg: 141.33, elevationM: 17 }, defaultPlantValues);
  it.each(bolted)('of %d mm bolt within 15 points of %d', (setSizeMm, share) => {
    const runner = runnerOf(site, {
      ...planDefaults,
      type: 'northern-long',
      start: 'sets',
      setSizeMm,
      startDay: dayNumber(nominalYear, 4, 25),
    });
    expect(Math.abs(runner.meanSeason().boltedShare - share)).toBeLessThanOrEqual(0.15);
  });
});
