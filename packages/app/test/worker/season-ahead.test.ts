import { dayNumber, type Observation } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { seasonAhead } from '../../src/worker/season-ahead.ts';
import type { SiteAsked } from '../../src/worker/site.ts';

/** A temperate place between two seas, invented. */
const site: SiteAsked = {
  climate: {
    latitudeDeg: 48,
    longitudeDeg: 4,
    elevationM: 200,
    tempMeanC: Float64Array.of(2, 3, 7, 11, 15, 18, 20, 20, 16, 11, 6, 3),
    tempRangeC: new Float64Array(12).fill(9),
    rainMm: new Float64Array(12).fill(60),
    wetDays: new Float64Array(12).fill(12),
    relativeHumidityPct: new Float64Array(12).fill(75),
    sunshinePct: new Float64Array(12).fill(45),
    wind10mMs: new Float64Array(12).fill(3),
    frostNights: Float64Array.of(18, 15, 8, 2, 0, 0, 0, 0, 0, 1, 7, 16),
    minTempSdC: new Float64Array(12).fill(4),
  },
  warmerC: 1,
  frostHollow: false,
  years: 3,
  seed: 1,
  practice: [],
  atHand: [],
};
const plan = { start: 'sets', startDay: dayNumber(2026, 3, 20) } as const;
const crop = { class: 'long' } as const;
const lastYear = (seen: readonly Observation[]) => ({ crop, plan, seen });
const ahead = (seen: readonly Observation[]) =>
  seasonAhead({
    site: { ...site, earlier: [lastYear(seen)] },
    crop,
    starts: ['sets'],
    start: 'sets',
    startDay: dayNumber(2027, 3, 20),
    today: dayNumber(2027, 3, 1),
    options: {},
    seen: [],
  });
const noted = { id: 'a', plantingId: 'p', date: '2026-08-20', lookedAt: 20 };

test('an earlier season is told of only where something that tells was seen of it', () => {
  expect(ahead([{ ...noted, topsOverShare: 0.5 }]).learnt).toMatchObject({ hasEarlier: true });
  expect(ahead([]).learnt).toBeNull();
  expect(ahead([{ ...noted, note: 'Weeded' }]).learnt).toBeNull();
});
