import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classNeedSunUpH, dayLengthClasses, dayNumber } from '../../src/index.ts';

const spring = dayNumber(2027, 3, 25);

describe('what a class asks of the days of a place', () => {
  test.each([0, 15, 30, 40, 45.75, 52, 60, -34])('is least for short-day onions at %s°', (latitudeDeg) => {
    const point = { latitudeDeg, longitudeDeg: 0 };
    const needs = dayLengthClasses.map((one) => classNeedSunUpH(point, one, 'direct-seed', spring));
    // kinds bred to winter, which long-day packets hold in places, start sooner than intermediate ones
    expect(needs[0]).toBeLessThan(Math.min(needs[1], needs[2]));
    // common practice, no source: packets say 10–12 h, 12–14 h and 14–16 h
    expect(needs[0]).toBeGreaterThan(9.5);
    expect(needs[2]).toBeLessThan(17);
  });

  test('hangs on the latitude, and on the longitude by seconds alone', () => {
    const places = fc.record({ latitudeDeg: fc.double({ min: -60, max: 65, noNaN: true }) });
    fc.assert(
      fc.property(places, fc.constantFrom(...dayLengthClasses), ({ latitudeDeg }, one) => {
        const at = (longitudeDeg: number) =>
          classNeedSunUpH({ latitudeDeg, longitudeDeg }, one, 'sets', spring);
        expect(Math.abs(at(-180) - at(180))).toBeLessThan(0.1);
      }),
      { seed: 5, numRuns: 50 },
    );
  });

  test('names a latitude that is none', () => {
    const beyond = { latitudeDeg: 91, longitudeDeg: 0 };
    expect(() => classNeedSunUpH(beyond, 'long', 'sets', spring)).toThrow('latitude');
  });
});
