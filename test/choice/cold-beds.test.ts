import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { climateDayOf, dayNumber } from '../../packages/engine/src/calendar/index.ts';
import { isWorkable, rootingDays, workableBedC } from '../../packages/engine/src/choice/workable.ts';
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
  // planted on trial, so late that most were lost: below
  const advised = windows.filter(({ id }) => id !== 'kr-jeonnam-late');
  const daysLeft = advised.flatMap(({ daysToCold = null }) => daysToCold ?? []);
  expect(daysLeft.length).toBeGreaterThan(1);
  // a day less: windows are told in round dates
  expect(Math.min(...daysLeft)).toBeGreaterThanOrEqual(rootingDays - 1);
  expect(Math.min(...daysLeft)).toBeLessThanOrEqual(rootingDays + 7);
});

test('plants that frost heaves out of the ground were set too late', () => {
  // Muan, Korea, winter of 2012/13: heaved 0.7 % of those planted early to mid-November, 69 % of those of early December
  // (Kwon et al. 2015, Effects of planting date for the prevention of frost-pillar damage on onion)
  const muan = siteOf({ latitudeDeg: 34.99, longitudeDeg: 126.48, elevationM: 20 });
  const isInTime = (month: number, day: number) =>
    isWorkable(muan, 'bought-transplants', dayNumber(2012, month, day));
  for (const day of [1, 5, 10, 15]) expect(isInTime(11, day), `${day} November`).toBe(true);
  for (const day of [1, 5, 10]) expect(isInTime(12, day), `${day} December`).toBe(false);
});
