import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clearSkyRadiation,
  daylightHoursFao,
  extraterrestrialRadiation,
  solarRadiation,
} from '../../src/sky/index.ts';

const latitude = fc.double({ min: -90, max: 90, noNaN: true });
const dayOfYear = fc.integer({ min: 1, max: 366 });

describe('radiation above the air', () => {
  // Worked examples 8–18 of FAO-56 are in bed/fao56-examples.test.ts. Here: the same integral by sums over the day.
  it('is the sun’s height summed over the day', () => {
    fc.assert(
      fc.property(latitude, dayOfYear, (latitudeDeg, day) => {
        const phi = (latitudeDeg * Math.PI) / 180;
        const delta = 0.409 * Math.sin((2 * Math.PI * day) / 365 - 1.39);
        const steps = 1440;
        let sum = 0;
        for (let minute = 0; minute < steps; minute++) {
          const angle = (2 * Math.PI * (minute + 0.5)) / steps;
          const sinHeight =
            Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.cos(angle);
          sum += Math.max(0, sinHeight);
        }
        const expected = 0.082 * (1 + 0.033 * Math.cos((2 * Math.PI * day) / 365)) * sum;
        expect(Math.abs(extraterrestrialRadiation(latitudeDeg, day) - expected)).toBeLessThan(0.001);
      }),
      { seed: 56 },
    );
  });

  it('is nothing in polar night, where day has no hours, and goes on in polar day', () => {
    expect(extraterrestrialRadiation(80, 355)).toBe(0);
    expect(daylightHoursFao(80, 355)).toBe(0);
    expect(daylightHoursFao(80, 172)).toBe(24);
    expect(extraterrestrialRadiation(90, 172)).toBeGreaterThan(40);
  });

  it('is never below what comes through a clear sky, nor that below what comes through cloud', () => {
    fc.assert(
      fc.property(
        latitude,
        dayOfYear,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (latitudeDeg, day, sunshine) => {
          const ra = extraterrestrialRadiation(latitudeDeg, day);
          const clear = clearSkyRadiation(ra, 500);
          const rs = solarRadiation(ra, sunshine);
          return rs >= 0 && rs <= clear && clear <= ra;
        },
      ),
      { seed: 57 },
    );
  });
});
