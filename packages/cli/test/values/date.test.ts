import { dayNumber, formatDay } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../src/refusal/refusal.ts';
import { dateLimits, parseDate, parseToday } from '../../src/values/date.ts';

const today = dayNumber(2027, 5, 3);
const limits = dateLimits(today);
const read = (text: string) => formatDay(parseDate(text, '--date', today, limits));

function refused(run: () => unknown) {
  try {
    run();
  } catch (error) {
    return refusalOf(error);
  }
  return null;
}

describe('a date without a year', () => {
  test('is the next such day, today included', () => {
    expect(read('05-03')).toBe('2027-05-03');
    expect(read('05-04')).toBe('2027-05-04');
    expect(read('05-02')).toBe('2028-05-02');
    expect(read('12-31')).toBe('2027-12-31');
  });

  test('of 29 February is the next leap year’s', () => {
    expect(read('02-29')).toBe('2028-02-29');
  });
});

describe('a full date', () => {
  test('is taken as it is, from two years back to five ahead', () => {
    expect(read('2027-03-25')).toBe('2027-03-25');
    expect(read('2025-05-03')).toBe('2025-05-03');
    expect(read('2032-05-03')).toBe('2032-05-03');
    for (const beyond of ['2025-05-02', '2032-05-04', '1999-01-01']) {
      expect(refused(() => read(beyond))).toMatchObject({
        code: 'date-limits',
        exit: 2,
        expected: '2025-05-03…2032-05-03',
      });
    }
  });

  test('counts the limits of 29 February to 1 March', () => {
    const leap = dateLimits(dayNumber(2028, 2, 29));
    expect([formatDay(leap.from), formatDay(leap.to)]).toEqual(['2026-03-01', '2033-03-01']);
  });
});

test.each(['02-30', '2027-02-30', '13-01', '2027-00-10', '04-31', '2027-02-29'])(
  'a day that is in no calendar is refused: %s',
  (text) => expect(refused(() => read(text))).toMatchObject({ code: 'date-not-in-calendar', exit: 2 }),
);

test.each(['', 'tomorrow', '3-25', '25.03.2027', '2027/03/25', '03-25-2027', '2027-3-5', 'NaN'])(
  'another form is refused: "%s"',
  (text) => expect(refused(() => read(text))).toMatchObject({ code: 'date-form', field: '--date' }),
);

describe('--today', () => {
  test('is a full date', () => {
    expect(formatDay(parseToday('2027-05-03'))).toBe('2027-05-03');
    expect(refused(() => parseToday('05-03'))).toMatchObject({ code: 'full-date-form' });
  });

  test('lies in the years the sun is computed for', () => {
    expect(refused(() => parseToday('1949-12-31'))).toMatchObject({ code: 'today-limits' });
    expect(refused(() => parseToday('2091-01-01'))).toMatchObject({ code: 'today-limits' });
  });
});
