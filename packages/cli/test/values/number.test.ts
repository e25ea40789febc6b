import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../src/refusal/refusal.ts';
import { parseNumber, readNumber } from '../../src/values/number.ts';

const years = { field: '--years', min: 1, max: 200, whole: true };
const density = { field: '--density', min: 5, max: 400, unit: 'per m²' };

function refused(run: () => unknown) {
  try {
    run();
  } catch (error) {
    return refusalOf(error);
  }
  return null;
}

describe('numbers', () => {
  test('have a decimal point or comma', () => {
    expect(readNumber('16.5')).toBe(16.5);
    expect(readNumber('16,5')).toBe(16.5);
    expect(readNumber('-1')).toBe(-1);
    expect(readNumber('−1')).toBe(-1);
    expect(readNumber('1e2')).toBe(100);
  });

  test.each(['', ' ', 'NaN', 'Infinity', '-Infinity', '0x10', '1 000', '1,000,000', '12h', '--json'])(
    'are nothing else: "%s"',
    (text) => expect(readNumber(text)).toBeNull(),
  );

  test('may lie on their limits', () => {
    expect(parseNumber('1', years)).toBe(1);
    expect(parseNumber('200', years)).toBe(200);
    expect(parseNumber('5', density)).toBe(5);
    expect(parseNumber('400', density)).toBe(400);
  });

  test.each(['0', '-1', '201', '1e9', 'NaN', '2.5'])('of years are refused: %s', (text) => {
    expect(refused(() => parseNumber(text, years))).toMatchObject({
      code: 'whole-number',
      exit: 2,
      field: '--years',
      values: { value: text, min: 1, max: 200 },
    });
  });

  test.each(['0', '-40', '4.9', '400.1', '1e9'])('of plants are refused: %s', (text) => {
    expect(refused(() => parseNumber(text, density))).toMatchObject({ code: 'number', field: '--density' });
  });
});
