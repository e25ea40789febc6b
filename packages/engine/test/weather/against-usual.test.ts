import { expect, test } from 'vitest';
import { climateDayOf, dayNumber } from '../../src/calendar/index.ts';
import { againstUsual, emptyRecord, meanYear, recordGaps } from '../../src/weather/index.ts';
import { wetWinterCoast } from './climates.ts';

const usual = meanYear(wetWinterCoast);
const firstDay = dayNumber(2028, 2, 20);

/** Forty days over a 29 February: 1.5 °C warmer by day, 0.5 by night, with twice the rain. */
function warmSpell() {
  const record = emptyRecord(firstDay, 40);
  for (let at = 0; at < record.days; at++) {
    const day = climateDayOf(firstDay + at);
    record.tempMinC[at] = usual.tempMinC[day]! + 0.5;
    record.tempMaxC[at] = usual.tempMaxC[day]! + 1.5;
    record.rainMm[at] = 2 * usual.rainMm[day]!;
  }
  for (const marks of [record.known.tempMinC, record.known.tempMaxC, record.known.rainMm]) marks.fill(1);
  return record;
}

test('a record is told against what is usual on its own days of the year', () => {
  const against = againstUsual(warmSpell(), usual);
  expect(against.warmerC).toBeCloseTo(1, 9);
  expect([against.tempDays, against.rainDays]).toEqual([40, 40]);
  expect(against.rainMm).toBeCloseTo(2 * against.usualRainMm, 9);
});

test('days that were not measured, or lie past those meant, say nothing', () => {
  const record = warmSpell();
  record.known.tempMinC.fill(0, 0, 10);
  record.known.rainMm.fill(0, 0, 25);
  const against = againstUsual(record, usual, 30);
  expect([against.tempDays, against.rainDays]).toEqual([20, 5]);
  expect(againstUsual(emptyRecord(firstDay, 5), usual)).toEqual({
    tempDays: 0,
    warmerC: null,
    rainDays: 0,
    rainMm: 0,
    usualRainMm: 0,
  });
});

test('gaps are runs of days that lack either temperature', () => {
  const record = warmSpell();
  expect(recordGaps(record)).toEqual([]);
  record.known.tempMinC.fill(0, 3, 5);
  record.known.tempMaxC.fill(0, 4, 7);
  record.known.tempMaxC[39] = 0;
  expect(recordGaps(record)).toEqual([
    { from: firstDay + 3, to: firstDay + 6 },
    { from: firstDay + 39, to: firstDay + 39 },
  ]);
});
