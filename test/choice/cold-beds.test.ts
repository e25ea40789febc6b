import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { climateDayOf } from '../../packages/engine/src/calendar/index.ts';
import { rootingDays, workableBedC } from '../../packages/engine/src/choice/workable.ts';
import { readCalendarRows } from '../../tools/score/calendar-rows.ts';
import { siteOf } from './published.ts';

const shared = process.env.NECKFALL_SHARED;
const calendars =
  shared === undefined
    ? fileURLToPath(new URL('../../tools/score/fixtures/calendars.json', import.meta.url))
    : `${shared}/data/calendars.json`;

/** Bed temperatures at the first day and the middle of each published window for sowing or planting outdoors, °C. */
const windows = readCalendarRows(calendars).flatMap((row) => {
  const window = row.start === 'raised-seedlings' ? row.plantOutWindow : row.startWindow;
  if (!window || (row.outcome !== null && row.outcome !== 'good')) return [];
  const { soilMeanC } = siteOf(row).mean('none');
  const at = (day: number) => soilMeanC[climateDayOf(day)];
  return [
    {
      id: row.id,
      first: at(window.from),
      middle: at((window.from + window.to) >> 1),
      daysToCold: Array.from({ length: 60 }, (_, ahead) => ahead).find(
        (ahead) => at(window.to + ahead) < workableBedC,
      ),
    },
  ];
});

test('published calendars hardly ever sow or plant in a bed that counts as too cold to work', () => {
  expect(windows.length).toBeGreaterThan(20);
  expect(Math.min(...windows.map(({ middle }) => middle))).toBeGreaterThan(workableBedC - 0.5);
  const cold = windows.filter(({ first }) => first < workableBedC);
  expect(cold.length / windows.length, cold.map(({ id }) => id).join(', ')).toBeLessThan(0.1);
});

test('published windows before winter end about a fortnight or more before beds turn too cold for roots', () => {
  const beforeWinter = windows.filter(({ daysToCold = 0 }) => daysToCold > 0);
  expect(beforeWinter.length).toBeGreaterThan(4);
  for (const { id, daysToCold } of beforeWinter)
    expect(daysToCold, id).toBeGreaterThanOrEqual(rootingDays - 1);
});
