import { describe, expect, test } from 'vitest';
import { bulbDiameterMm } from '../../src/plant/index.ts';
import { smallBulbG } from '../../src/season/index.ts';

describe('what counts as a small bulb', () => {
  // Common practice, no source.
  test('at 40 plants per m² is one under 55 mm, of tropical reds under 38 mm', () => {
    expect(bulbDiameterMm(smallBulbG('northern-long', 40))).toBeCloseTo(55, 9);
    expect(bulbDiameterMm(smallBulbG('tropical-short', 40))).toBeCloseTo(38, 9);
  });

  test('goes with the room: larger where plants stand wide, pickling size where they stand close', () => {
    // Pickling onions of 25–45 mm come from about 625 per m² (McGeary & Morgans 1985).
    const mm = (density: number) => bulbDiameterMm(smallBulbG('northern-long', density));
    expect(mm(15)).toBeGreaterThan(58);
    expect(mm(160)).toBeLessThan(45);
    expect(mm(625)).toBeLessThan(30);
  });
});
