import { describe, expect, test } from 'vitest';
import {
  climateDayOf,
  dayNumber,
  type OnionType,
  type StartMethod,
  startMethods,
  surveyOf,
  surveyPlace,
  surveyWays,
  tryStarts,
  type Way,
  type WhenAnswer,
  weekOf,
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

const waysWith = (type: OnionType, start: StartMethod): Way[] => [
  { type, traits: null, start, isUsual: () => true },
];

/** The weeks that the windows hold. */
function openWeeks({ windows }: WhenAnswer): Set<number> {
  const open = new Set<number>();
  for (const { from, to } of windows) {
    for (let week = weekStarts.indexOf(from); ; week = (week + 1) % 52) {
      open.add(week);
      if (weekStarts[week] === to) break;
    }
  }
  return open;
}

describe.each(places)('at %s', (_, latitudeDeg, longitudeDeg, elevationM) => {
  const site = siteOf({ latitudeDeg, longitudeDeg, elevationM });
  const { type } = surveyOf(site, days[0]).lead();
  const years = new Map<string, WhenAnswer>();
  /** The year from a day on of a way of starting; more than one test asks. */
  const yearOf = (start: StartMethod, day: number): WhenAnswer => {
    const key = `${start} ${day}`;
    const year = years.get(key) ?? tryStarts(site, waysWith(type, start), {}, day);
    years.set(key, year);
    return year;
  };

  test.each(startMethods)('what %s is worth today is what the windows of the year say', (start) => {
    const ways = waysWith(type, start);
    for (const day of days) {
      const open = openWeeks(yearOf(start, day));
      const [answer] = surveyWays(site, ways, day).today();
      const isOpen = open.has(weekOf(day));
      expect({ day, isOpen: answer.stillGoodUntil !== null }).toEqual({ day, isOpen });
      if (answer.stillGoodUntil !== null) {
        expect(open.has(weekOf(answer.stillGoodUntil))).toBe(true);
        expect(answer.stillGoodUntil).toBeGreaterThanOrEqual(day);
      }
      expect(answer.nextFrom === null).toBe(isOpen || open.size === 0);
      if (answer.nextFrom !== null) {
        const week = weekOf(answer.nextFrom);
        expect(open.has(week)).toBe(true);
        expect(open.has((week + 51) % 52)).toBe(false);
      }
    }
  });

  test('the best starts lie ahead, on week starts that are the same whatever the day', () => {
    const classesOn = (day: number) =>
      surveyOf(site, day)
        .classes()
        .map(({ class: dayLengthClass, bestStart, summary }) => {
          expect(summary.plan.startDay).toBeGreaterThanOrEqual(day);
          const dayOfYear = climateDayOf(summary.plan.startDay) + 1;
          expect(weekStarts).toContain(dayOfYear);
          return [dayLengthClass, bestStart, dayOfYear];
        });
    const [first, ...others] = days.map(classesOn);
    for (const other of others) expect(other).toEqual(first);
  });

  test('what is named for today is in time, from today or its best day in the same window', () => {
    for (const day of days) {
      const { now, today } = surveyPlace(site, day);
      const open = today.filter(({ stillGoodUntil }) => stillGoodUntil !== null);
      if (now === null) continue;
      const { plan } = now.summary;
      const own = open.find(({ start, type }) => start === plan.start && type === plan.type);
      expect(own?.stillGoodUntil).toBe(now.until);
      expect(now.verdict).toBe('good');
      expect(plan.startDay).toBeGreaterThanOrEqual(day);
      expect(plan.startDay).toBeLessThanOrEqual(now.until);
    }
  });

  test.each(startMethods)(
    'the best of the year of %s is the best of a window, where there is one',
    (start) => {
      const ways = waysWith(type, start);
      for (const day of days.slice(0, 2)) {
        const { windows, best } = yearOf(start, day);
        const { startDay } = surveyWays(site, ways, day).best().summary.plan;
        expect(climateDayOf(startDay) + 1).toBe(best);
        if (windows.length > 0) expect(windows.map((window) => window.best)).toContain(best);
      }
    },
  );
});
