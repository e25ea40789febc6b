import { describe, expect, test } from 'vitest';
import { sightingsOf } from '../../src/learn/sightings.ts';
import { daysBehind, standingGatherer } from '../../src/learn/standing.ts';
import { dayTrace } from '../../src/season/index.ts';
import { emptyOutcome } from '../../src/season/outcome.ts';
import { noted } from './a-season.ts';

/** A leaf every ten days from none, to nine, then fewer again. */
const curve = Array.from({ length: 160 }, (_, day) => Math.min(9, day / 10) - Math.max(0, (day - 120) / 20));

describe('days behind', () => {
  test('are those since the middling crop had the count', () => {
    expect(daysBehind(curve, 60, 5)).toBe(10);
    expect(daysBehind(curve, 60, 6)).toBe(0);
  });

  test('are negative where the middling crop has yet to get there', () => {
    expect(daysBehind(curve, 60, 7.5)).toBe(-15);
  });

  test('are not told of counts that it never has, nor once its old leaves die', () => {
    expect(daysBehind(curve, 60, 11)).toBeNull();
    expect(daysBehind(curve, 150, 5)).toBeNull();
  });
});

test('a crop stands by its last count against 8 seasons in 10 that nobody looked at', () => {
  const startDay = 20_000;
  const counts = [noted(startDay + 40, { leavesGreen: 3 }), noted(startDay + 50, { leavesGreen: 4.5 })];
  const gatherer = standingGatherer(sightingsOf(counts, startDay, startDay + 60).seen, 11)!;
  // eleven seasons, which have none to ten leaves by then
  for (let leaves = 0; leaves <= 10; leaves++) {
    const trace = dayTrace(200);
    for (let day = 0; day < 200; day++) trace.put(day, 0, (leaves * day) / 50, 1, 0, 0, 0);
    gatherer.add({ trace, outcome: { ...emptyOutcome(), emergedOn: 0, plantedOn: 0 }, dryMatterShare: 0.1 });
  }
  // the middle one has 4.5 on day 45
  expect(gatherer.standing(startDay)).toEqual({
    day: startDay + 50,
    leavesExpected: { p10: 1, p50: 5, p90: 9 },
    leavesSeen: 4.5,
    daysBehind: 5,
  });
});
