import { describe, expect, test } from 'vitest';
import { loadLater, type Quantity, speaker } from '../src/index.ts';

await loadLater();

const metric = speaker('metric');
const us = speaker('us');
/** Spaces differ between versions of the locale's data. */
const spaced = (text: string) => text.replace(/\s/g, ' ');

describe('numbers', () => {
  test.each([
    [0, 0, '0'],
    [-0.01, 0, '0'],
    [0.05, 1, '0.1'],
    [9.95, 1, '10'],
    [999.5, 0, '1,000'],
    [-1234, 0, '-1,234'],
    [12345678, 0, '12,345,678'],
  ])('%d with up to %i digits after the point is %s', (value, digits, told) => {
    expect(metric.number(value, digits)).toBe(told);
  });

  test('in a range whose ends read alike are one', () => {
    expect(metric.numberRange(3, 5)).toBe('3–5');
    expect(metric.numberRange(3.1, 3.2)).toBe('3');
    expect(spaced(metric.quantityRange('temperature', -5, -2))).toBe('-5 – -2°C');
  });
});

test('every quantity can be told, alone and in a range', () => {
  // exhaustive: a kind that is missing is an error of types
  const kinds: Record<Quantity, true> = {
    temperature: true,
    temperatureDifference: true,
    rain: true,
    dayTemperature: true,
    dayRain: true,
    bulbLength: true,
    bulbMass: true,
    seedMass: true,
    distance: true,
    elevation: true,
    wind: true,
    yield: true,
    crop: true,
    nitrogen: true,
    feed: true,
    water: true,
    bedWater: true,
    waterOnArea: true,
    area: true,
    rowLength: true,
    spacing: true,
    density: true,
    warmth: true,
  };
  for (const kind of Object.keys(kinds) as Quantity[])
    for (const { quantity, quantityRange } of [metric, us]) {
      expect(quantity(kind, 12)).toMatch(/\d\s?[\p{L}°]/u);
      expect(quantityRange(kind, 12, 120)).toMatch(/\d–[\d,.]+\s?[\p{L}°]/u);
    }
});

test('lists follow the locale', () => {
  const items = ['a', 'b', 'c'];
  expect([metric.all([]), metric.all(['a']), metric.all(items)]).toEqual(['', 'a', 'a, b and c']);
  expect([metric.any(items), us.all(items), us.any(items)]).toEqual([
    'a, b or c',
    'a, b, and c',
    'a, b, or c',
  ]);
});

test('countries are named, and a code of none stands as it is', () => {
  expect(metric.country('FR')).toBe('France');
  expect(metric.country('??')).toBe('??');
  expect(metric.country('constructor')).toBe('constructor');
});
