import { describe, expect, it } from 'vitest';
import { hourlyNormalsSite, readHourlyNormals } from '../../../../tools/climate/hourly-normals.ts';
import { climateAt } from '../../../engine/src/climate/index.ts';
import { readClimateNodes } from '../../src/climate/index.ts';

const nodes = readClimateNodes();

/** Memory: long-term means as commonly printed, no source looked up; hence the wide limits. Month 1…12. */
const temperatures: [
  town: string,
  latitude: number,
  longitude: number,
  elevationM: number,
  month: number,
  low: number,
  high: number,
][] = [
  ['London', 51.51, -0.13, 20, 1, 3, 7],
  ['London', 51.51, -0.13, 20, 7, 16, 20],
  ['Moscow', 55.75, 37.62, 150, 1, -11, -5],
  ['Phoenix', 33.45, -112.07, 340, 7, 31, 36],
  ['Winnipeg', 49.9, -97.14, 235, 1, -20, -14],
  ['Singapore', 1.35, 103.82, 15, 6, 26, 29],
  ['Bogotá', 4.71, -74.07, 2550, 7, 11, 16],
  ['Nairobi', -1.29, 36.82, 1700, 7, 14, 19],
  ['Sydney', -33.87, 151.21, 20, 1, 21, 24.5],
  ['Christchurch', -43.53, 172.64, 10, 7, 4, 8],
  ['Tokyo', 35.68, 139.69, 20, 8, 24.5, 28.5],
  ['Cairo', 30.04, 31.24, 25, 7, 26, 30],
];

/** Memory, as above: rain of the year, mm. */
const yearlyRain: [
  town: string,
  latitude: number,
  longitude: number,
  elevationM: number,
  low: number,
  high: number,
][] = [
  ['London', 51.51, -0.13, 20, 520, 750],
  ['Cairo', 30.04, 31.24, 25, 5, 60],
  ['Singapore', 1.35, 103.82, 15, 1900, 2700],
  // printed near 2,300: below the Ghats the nodes mix in their rain
  ['Mumbai', 19.08, 72.88, 10, 1800, 3200],
  ['Phoenix', 33.45, -112.07, 340, 130, 270],
  ['Sydney', -33.87, 151.21, 20, 900, 1400],
];

describe('climates as commonly known', () => {
  it.each(temperatures)(
    '%s (%s, %s, %s m) month %s: mean between %s and %s °C',
    (_, latitude, longitude, elevation, month, low, high) => {
      const mean = climateAt(nodes, latitude, longitude, elevation).tempMeanC[month - 1];
      expect(mean).toBeGreaterThanOrEqual(low);
      expect(mean).toBeLessThanOrEqual(high);
    },
  );

  it.each(yearlyRain)(
    '%s (%s, %s, %s m): %s to %s mm a year',
    (_, latitude, longitude, elevation, low, high) => {
      const year = climateAt(nodes, latitude, longitude, elevation).rainMm.reduce((sum, mm) => sum + mm, 0);
      expect(year).toBeGreaterThanOrEqual(low);
      expect(year).toBeLessThanOrEqual(high);
    },
  );
});

describe('Seattle against the hourly normals 1981–2010 of vega-datasets', () => {
  const { latitudeDeg, longitudeDeg, elevationM } = hourlyNormalsSite;
  const fitted = climateAt(nodes, latitudeDeg, longitudeDeg, elevationM);
  const normals = readHourlyNormals();

  // the source of the temperatures is itself 0.9 °C too cold there, 2.1 °C in January (docs/climate.md)
  it('holds monthly mean temperatures within 2.5 °C and the year within 1.2 °C', () => {
    const offsets = fitted.tempMeanC.map((value, month) => value - normals.tempMeanC[month]);
    for (const offset of offsets) expect(Math.abs(offset)).toBeLessThan(2.5);
    expect(Math.abs(offsets.reduce((sum, offset) => sum + offset, 0) / 12)).toBeLessThan(1.2);
  });

  it('has a wider daily range than the mean hours do', () => {
    fitted.tempRangeC.forEach((range, month) => {
      expect(range).toBeGreaterThan(normals.hourlyRangeC[month] - 0.5);
    });
  });
});
