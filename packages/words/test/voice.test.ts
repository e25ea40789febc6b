import { describe, expect, test } from 'vitest';
import { speaker } from '../src/index.ts';

const metric = speaker('metric');
const us = speaker('us');
/** 12 August 2027: 2027-01-01 is day 20,819 (57 years, 14 leap days). */
const august12 = 20_819 + 223;

describe('dates', () => {
  test('follow the locale', () => {
    expect(metric.day(august12)).toBe('12 August');
    expect(us.day(august12)).toBe('August 12');
    expect(metric.dayWithYear(august12)).toBe('12 August 2027');
  });

  test('of a year without a name count from 1 January', () => {
    expect(metric.dayOfYear(1)).toBe('1 January');
    expect(metric.dayOfYear(60)).toBe('1 March');
    expect(metric.dayOfYear(365)).toBe('31 December');
  });

  test('in a range name the month once', () => {
    expect(metric.dayRange(august12 - 11, august12 + 13)).toMatch(/^1\s?–\s?25 August$/);
    expect(metric.dayRange(august12, august12)).toBe('12 August');
  });

  test('in a range across New Year keep their order', () => {
    expect(metric.dayOfYearRange(350, 20)).toBe('16 December – 20 January');
  });

  test('name all twelve months', () => {
    const names = Array.from({ length: 12 }, (_, i) => us.month(i + 1));
    expect(names.join(' ')).toBe('Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec');
  });
});

describe('quantities', () => {
  test('come in metric and American units', () => {
    expect(metric.quantity('temperature', 20)).toBe('20°C');
    expect(us.quantity('temperature', 20)).toBe('68°F');
    expect(us.quantity('temperatureDifference', 1)).toBe('1.8°F');
    expect(us.quantity('bulbLength', 76.2)).toBe('3 in');
    expect(us.quantity('elevation', 304.8)).toBe('1,000 ft');
    expect(us.quantity('distance', 16.09344)).toBe('10 mi');
    // 1 kg/m² = 0.20482 lb/ft²
    expect(us.quantity('yield', 10)).toBe('2.05 lb per square foot');
    expect(metric.quantity('yield', 3.24)).toBe('3.2 kg/m²');
    // 40 plants per m² on 0.0929 m²
    expect(us.quantity('density', 40)).toBe('3.7 plants per square foot');
  });

  test('in a range say the unit once', () => {
    expect(metric.quantityRange('bulbLength', 55, 78)).toBe('55–78 mm');
    expect(metric.quantityRange('yield', 1, 2)).toBe('1–2 kg/m²');
    expect(metric.quantityRange('bulbLength', 54.1, 54.3)).toBe('54 mm');
  });

  test('never show a negative zero', () => {
    expect(metric.quantity('temperature', -0.01)).toBe('0°C');
  });
});

describe('shares', () => {
  test('are told in tenths', () => {
    expect(metric.years(0.7, 30)).toBe('in 7 years in 10');
    expect(metric.years(0.1, 30)).toBe('in 1 year in 10');
    expect(metric.years(0.02, 100)).toBe('in hardly any year');
    expect(metric.years(0.99, 100)).toBe('in nearly every year');
    expect(metric.plants(0.32)).toBe('3 plants in 10');
  });

  test('of all years or none say how many were tried, and claim no certainty where none were', () => {
    expect(metric.years(1, 30)).toBe('in all 30 years tried');
    expect(metric.years(0, 30)).toBe('in none of 30 years tried');
    expect(metric.years(1, 1)).toBe('in the one year tried');
    expect(metric.years(0, 1)).toBe('in no year (one tried)');
    expect(metric.years(1, null)).toBe('in nearly every year');
    expect(metric.years(0, null)).toBe('in hardly any year');
  });

  test('of a reason do so too', () => {
    const reason = { code: 'choice-last', values: { goodYearShare: 1, years: 12 } };
    expect(metric.reason(reason)).toMatch(/^Good bulbs come in all 12 years tried;/);
  });
});

test('day lengths round to the minute without reaching 60', () => {
  expect(metric.dayLength(15.4)).toBe('15 h 24 min');
  expect(metric.dayLength(14.9999)).toBe('15 h');
});

test('an unknown key and a missing value are errors, not holes in a sentence', () => {
  expect(() => metric.say('where.none', {})).toThrow();
  expect(() => metric.reason({ code: 'no-such-reason', values: {} })).toThrow('no message');
});
