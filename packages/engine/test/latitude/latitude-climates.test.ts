import { readClimateNodes } from '@neckfall/data/node';
import { describe, expect, test } from 'vitest';
import { climateFields, fieldForms, landWarmingSinceNormalsC, lapseCPerM } from '../../src/climate/index.ts';
import { lastLatitude, latitudeClimate, latitudeClimates, lowM } from '../../src/latitude/index.ts';

const nodes = readClimateNodes();
const climates = latitudeClimates(nodes);
const degrees = Array.from({ length: lastLatitude + 1 }, (_, degree) => degree);

/** A month of a field at a point, as the point holds it. */
function monthAt(field: (typeof climateFields)[number], node: number, month: number): number {
  const { mean, components, scores } = nodes.fields[field];
  const value = components.reduce(
    (sum, component, c) => sum + scores[node * components.length + c] * component[month],
    mean[month],
  );
  if (fieldForms[field] === 'sea-level') return value - lapseCPerM * nodes.elevationM[node];
  return fieldForms[field] === 'root' ? Math.max(0, value) ** 2 : value;
}

describe('the climate of a latitude', () => {
  test('stays, month by month, inside the range of the low points around it', () => {
    for (const degree of degrees.filter((one) => one % 7 === 0)) {
      const around = Array.from({ length: nodes.count }, (_, node) => node).filter(
        (node) => nodes.elevationM[node] <= lowM && Math.abs(Math.abs(nodes.latitudeDeg[node]) - degree) < 5,
      );
      expect(around.length).toBeGreaterThan(40);
      const climate = latitudeClimate(climates, degree, 0);
      for (const field of climateFields) {
        for (let month = 0; month < 12; month++) {
          const of = around.map((node) =>
            monthAt(field, node, nodes.latitudeDeg[node] < 0 ? (month + 6) % 12 : month),
          );
          const value = climate[field][month] - (field === 'tempMeanC' ? landWarmingSinceNormalsC : 0);
          // frost nights follow the warming, which takes some away
          const least = field === 'frostNights' ? 0 : Math.min(...of);
          expect(value).toBeGreaterThanOrEqual(least - 1e-6);
          expect(value).toBeLessThanOrEqual(Math.max(...of) + 1e-6);
        }
      }
    }
  });

  test('goes from the heat of the equator to the cold of the north without a leap', () => {
    const means = degrees.map((degree) => mean(latitudeClimate(climates, degree, 0).tempMeanC));
    expect(means[0]).toBeGreaterThan(24);
    expect(means[70]).toBeLessThan(0);
    for (let degree = 1; degree <= lastLatitude; degree++)
      expect(Math.abs(means[degree] - means[degree - 1])).toBeLessThan(1.5);
  });

  test('is turned by half a year south of the equator, and otherwise the same', () => {
    const north = latitudeClimate(climates, 40, 1);
    const south = latitudeClimate(climates, -40, 1);
    expect(south.latitudeDeg).toBe(-40);
    for (const field of climateFields)
      for (let month = 0; month < 12; month++)
        // a night of frost more or less, as months have more or fewer days
        expect(south[field][month]).toBeCloseTo(
          north[field][(month + 6) % 12],
          field === 'frostNights' ? 0 : 6,
        );
  });

  test('is moved by warmth, every month alike', () => {
    const usual = latitudeClimate(climates, 52, 0);
    const warmer = latitudeClimate(climates, 52, 3);
    warmer.tempMeanC.forEach((month, i) => {
      expect(month).toBeCloseTo(usual.tempMeanC[i] + 3, 9);
    });
    expect(sum(warmer.frostNights)).toBeLessThan(sum(usual.frostNights));
  });

  test('refuses what it cannot tell', () => {
    expect(() => latitudeClimate(climates, 71, 0)).toThrow('latitude 71');
    expect(() => latitudeClimate(climates, 51.5, 0)).toThrow('whole degrees');
    expect(() => latitudeClimate(climates, 51, 9)).toThrow('warmer by 9');
  });
});

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);
const mean = (values: ArrayLike<number>) => sum(values) / values.length;
