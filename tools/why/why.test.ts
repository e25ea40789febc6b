import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { readCalendarRows } from '../score/calendar-rows.ts';
import { isFirst, shareOf } from './figures.ts';
import { calendarFailures, failuresOfTrials } from './published.ts';
import { missReasons, statedCauses } from './stated-causes.ts';

const fixture = fileURLToPath(new URL('../score/fixtures/calendars.json', import.meta.url));
const rows = readCalendarRows(fixture);
const calendars = calendarFailures(rows, statedCauses);
const trials = failuresOfTrials();

describe('published failures', () => {
  test('are all those of the calendars', () => {
    const failed = rows.filter(({ outcome }) => outcome !== null && outcome !== 'good');
    expect(failed.map(({ id }) => id).sort()).toEqual([...statedCauses.keys()].sort());
  });

  test.each([
    ['calendars', calendars],
    ['trials', trials],
  ] as const)('of %s have the stated cause first in four of five', (_, failures) => {
    const right = shareOf(failures, ({ answer, stated }) => isFirst(answer, stated));
    expect(right).toBeGreaterThanOrEqual(0.8);
  });

  test('that are missed are just those that have a reason', () => {
    const missed = [...calendars, ...trials].filter(({ answer, stated }) => !isFirst(answer, stated));
    expect(missed.map(({ id }) => id).sort()).toEqual([...missReasons.keys()].sort());
  });
});
