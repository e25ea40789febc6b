import { dayNumber } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { whichOnion } from '../../src/worker/which-onion.ts';

/** Mild and windy at 41° S, where packets of long-day seed and long-day sets hold different onions; invented. */
const site = {
  climate: {
    latitudeDeg: -41,
    longitudeDeg: 175,
    elevationM: 20,
    tempMeanC: Float64Array.of(17, 17, 16, 14, 12, 10, 9, 9.5, 11, 12, 13.5, 15.5),
    tempRangeC: new Float64Array(12).fill(7),
    rainMm: new Float64Array(12).fill(90),
    wetDays: new Float64Array(12).fill(10),
    relativeHumidityPct: new Float64Array(12).fill(78),
    sunshinePct: new Float64Array(12).fill(48),
    wind10mMs: new Float64Array(12).fill(5),
    frostNights: Float64Array.of(0, 0, 0, 0, 1, 3, 4, 3, 1, 0, 0, 0),
    minTempSdC: new Float64Array(12).fill(3),
  },
  warmerC: 0,
  frostHollow: false,
  years: 6,
  seed: 1,
  practice: [],
  atHand: ['sets' as const],
};
const packet = { class: null, hours: null, days: null };
const onion = { name: 'your onion', starts: ['sets' as const], packet, keepsMonths: null };

test.each([
  [2027, 2, 10],
  [2027, 5, 3],
  [2027, 8, 20],
])('sets of which nothing is said are one onion in all that is told of them: %i-%i-%i', (...date) => {
  const { choices, grown, now, read } = whichOnion({
    site,
    onion,
    firstDay: dayNumber(...date),
    options: {},
  });
  const { summary } = now!;
  expect(choices).toHaveLength(1);
  expect(choices[0].kind.type).toBe(summary.plan.type);
  expect(choices[0].summary).toBe(summary);
  expect(grown[0].kind).toEqual(choices[0].kind);
  expect(read!.type).toBe(summary.plan.type);
});
