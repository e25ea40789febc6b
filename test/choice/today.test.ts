import { describe, expect, test } from 'vitest';
import {
  civilDate,
  dayNumber,
  dayOfYear,
  type OpenPlan,
  planDefaults,
  type Site,
  startMethods,
  startToday,
  surveyClasses,
  surveyPlace,
  surveyToday,
  tryStarts,
  weekStarts,
} from '../../packages/engine/src/index.ts';
import { siteOf } from './published.ts';

const places: [name: string, latitudeDeg: number, longitudeDeg: number, elevationM: number][] = [
  ['London', 51.5, -0.1, 20],
  ['Helsinki', 60.2, 24.9, 20],
  ['Lyon', 45.75, 4.85, 170],
  ['Springfield, Missouri', 37.2, -93.3, 390],
  ['Houston', 29.76, -95.4, 15],
  ['Nairobi', -1.3, 36.8, 1700],
  ['Melbourne', -37.8, 144.9, 30],
];
const days = [dayNumber(2027, 2, 20), dayNumber(2027, 5, 3), dayNumber(2027, 9, 5), dayNumber(2027, 11, 27)];

/** Week of the year, 0…51, that a day lies in. */
const weekOf = (day: number) => Math.min(51, Math.floor((dayOfYear(day) - 1) / 7));

/** The weeks that the windows of a year hold; a leap year's differ by a day. */
function openWeeks(site: Site, plan: OpenPlan, year: number): Set<number> {
  const open = new Set<number>();
  for (const { from, to } of tryStarts(site, plan, year).windows) {
    for (let week = weekStarts.indexOf(from); ; week = (week + 1) % 52) {
      open.add(week);
      if (weekStarts[week] === to) break;
    }
  }
  return open;
}

describe.each(places)('at %s', (_, latitudeDeg, longitudeDeg, elevationM) => {
  const site = siteOf({ latitudeDeg, longitudeDeg, elevationM });
  const type = surveyClasses(site, days[0])[0].type;

  test.each(startMethods)('what %s is worth today is what the windows of the year say', (start) => {
    const plan = { ...planDefaults, type, start };
    const years = new Map([2027, 2028].map((year) => [year, openWeeks(site, plan, year)]));
    const openIn = (day: number) => years.get(civilDate(day).year) ?? new Set();
    for (const day of days) {
      const answer = startToday(site, { type, traits: null }, start, day);
      const isOpen = openIn(day).has(weekOf(day));
      expect({ day, isOpen: answer.stillGoodUntil !== null }).toEqual({ day, isOpen });
      if (answer.stillGoodUntil !== null) {
        expect(openIn(answer.stillGoodUntil).has(weekOf(answer.stillGoodUntil))).toBe(true);
        expect(answer.stillGoodUntil).toBeGreaterThanOrEqual(day);
      }
      expect(answer.nextFrom === null).toBe(isOpen || openIn(day).size === 0);
      if (answer.nextFrom !== null) {
        const week = weekOf(answer.nextFrom);
        const open = openIn(answer.nextFrom);
        expect(open.has(week)).toBe(true);
        expect(open.has((week + 51) % 52)).toBe(false);
      }
    }
  });

  test('the best start lies ahead, on a week start of the year', () => {
    for (const day of days) {
      for (const { summary } of surveyClasses(site, day)) {
        expect(summary.plan.startDay).toBeGreaterThanOrEqual(day);
        expect(weekStarts).toContain(dayOfYear(summary.plan.startDay));
      }
    }
  });
});

test('a survey is its two halves', () => {
  const site = siteOf({ latitudeDeg: 45.75, longitudeDeg: 4.85, elevationM: 170 });
  const whole = surveyPlace(site, days[1]);
  expect(whole).toEqual({ classes: surveyClasses(site, days[1]), today: surveyToday(site, days[1]) });
});

test.each(places.filter(([, latitudeDeg]) => latitudeDeg > 40))(
  'at %s the leading onion starts on the day that the windows of the year call best',
  (_, latitudeDeg, longitudeDeg, elevationM) => {
    const site = siteOf({ latitudeDeg, longitudeDeg, elevationM });
    const [{ summary }] = surveyClasses(site, dayNumber(2027, 1, 4));
    const { type, start, startDay } = summary.plan;
    const { windows } = tryStarts(site, { ...planDefaults, type, start }, 2027);
    expect(windows.map(({ best }) => best)).toContain(dayOfYear(startDay));
  },
);
