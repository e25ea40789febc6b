import type { DayRow } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { readiness } from '../../src/facts/readiness.ts';

const row = (day: number, photoperiodH: number, bulbing: number): DayRow => ({
  day,
  photoperiodH,
  bulbing,
  sunUpH: photoperiodH - 1,
  tempMeanC: 15,
  leavesMade: 3,
  leavesGreen: 3,
  shootG: 1,
  bulbG: 0,
  ripening: 0,
});

describe('readiness', () => {
  test('tells the day days are long enough from the day the plant is ready too', () => {
    const rows = [row(1, 13, 0), row(2, 14.1, 0), row(3, 14.2, 0), row(4, 14.3, 0.05), row(5, 14.4, 0.1)];
    expect(readiness(rows, 14)).toEqual({ long: 2, big: 4 });
  });

  test('of two stretches of long days, names the one bulbs start in', () => {
    const rows = [row(1, 15, 0), row(2, 15, 0), row(3, 10, 0), row(4, 14.5, 0), row(5, 14.6, 0.1)];
    expect(readiness(rows, 14)).toEqual({ long: 4, big: 5 });
  });

  test('says nothing of days that were long from the start', () => {
    expect(readiness([row(1, 15, 0), row(2, 15, 0.1)], 14)).toEqual({ long: null, big: 2 });
  });

  test('knows a crop that never gets there', () => {
    expect(readiness([row(1, 12, 0), row(2, 13, 0)], 14)).toEqual({ long: null, big: null });
    expect(readiness([row(1, 12, 0), row(2, 14.5, 0)], 14)).toEqual({ long: 2, big: null });
    expect(readiness([], 14)).toEqual({ long: null, big: null });
  });
});
