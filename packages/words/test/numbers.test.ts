import { parse } from '@formatjs/icu-messageformat-parser';
import { describe, expect, test } from 'vitest';
import { allMessages, speaker, usEnglish } from '../src/index.ts';
import { formatNumber } from '../src/numbers.ts';

const english = allMessages();

const values = [
  0, -0.01, 0.04, 0.05, 0.25, 1, 2.25, 9.95, 12, 99.5, 999.5, 1000, 1234.5, -3.4, -1234, 1e6, 12345678,
];
const metric = speaker('metric');
const us = speaker('us');

// source: Unicode CLDR, as the Intl formats of this machine have it
describe('numbers are told as the locale tells them', () => {
  test.each([0, 1, 2, 3])('with up to %i digits after the point', (digits) => {
    const known = new Intl.NumberFormat('en-GB', { maximumFractionDigits: digits, signDisplay: 'negative' });
    for (const value of values) expect(formatNumber(value, { digits })).toBe(known.format(value));
  });

  test.each([
    ['temperature', 'celsius', 0],
    ['temperatureDifference', 'celsius', 1],
    ['bulbLength', 'millimeter', 0],
    ['bulbMass', 'gram', 0],
    ['distance', 'kilometer', 0],
    ['elevation', 'meter', 0],
    ['wind', 'meter-per-second', 1],
    ['crop', 'kilogram', 1],
    ['spacing', 'centimeter', 1],
  ] as const)('%s in units of the locale: %s', (kind, unit, digits) => {
    const known = new Intl.NumberFormat('en-GB', {
      style: 'unit',
      unit,
      unitDisplay: 'short',
      maximumFractionDigits: digits,
      signDisplay: 'negative',
    });
    for (const value of values) expect(metric.quantity(kind, value)).toBe(known.format(value));
    for (const [from, to] of [
      [3, 5],
      [-5, 2],
      [-5, -2],
      [1200, 2300],
    ])
      expect(metric.quantityRange(kind, from, to)).toBe(known.formatRange(from, to));
  });

  test.each([
    ['distance', 'mile', 1609.344],
    ['elevation', 'foot', 0.3048],
  ] as const)('American %s in units of the locale', (kind, unit, perUnit) => {
    const known = new Intl.NumberFormat('en-US', { style: 'unit', unit, maximumFractionDigits: 0 });
    const si = kind === 'distance' ? perUnit / 1000 : perUnit;
    for (const value of [1, 12, 1000, 12_345])
      expect(us.quantity(kind, value * si)).toBe(known.format(value));
  });

  test('lists', () => {
    for (const [voice, locale] of [
      [metric, 'en-GB'],
      [us, 'en-US'],
    ] as const) {
      for (const items of [[], ['a'], ['a', 'b'], ['a', 'b', 'c'], ['a', 'b', 'c', 'd']]) {
        expect(voice.all(items)).toBe(new Intl.ListFormat(locale, { type: 'conjunction' }).format(items));
        expect(voice.any(items)).toBe(new Intl.ListFormat(locale, { type: 'disjunction' }).format(items));
      }
    }
  });

  test('countries', () => {
    for (const [voice, locale] of [
      [metric, 'en-GB'],
      [us, 'en-US'],
    ] as const) {
      const known = new Intl.DisplayNames(locale, { type: 'region' });
      for (const code of ['FR', 'GB', 'US', 'CI', 'VC', 'LC', 'ST', 'TR', 'ZA', 'NZ', 'BA'])
        expect(voice.country(code)).toBe(known.of(code));
    }
    expect(metric.country('??')).toBe('??');
  });
});

/** Elements of a message: see the message format's reader. */
type Element = { type: number; style?: unknown; options?: Record<string, { value: Element[] }> };
const [date, time] = [3, 4];

test('no message asks for a date, a time or a kind of number that we do not tell', () => {
  const visit = (elements: readonly Element[]) => {
    for (const { type, style, options } of elements) {
      expect([date, time]).not.toContain(type);
      const asked = (style as { parsedOptions?: object } | null)?.parsedOptions ?? {};
      expect(typeof style).not.toBe('string');
      for (const name of Object.keys(asked)) expect(name).toBe('minimumIntegerDigits');
      for (const { value } of Object.values(options ?? {})) visit(value);
    }
  };
  for (const message of [...Object.values(english), ...Object.values(usEnglish)])
    visit(parse(message) as Element[]);
});
