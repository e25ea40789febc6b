import type { Pull } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { whatItHangsOn } from '../../src/index.ts';

type Nudged = Pull['more'];
const nudged = (by: number, neckFallDays: number | null, other: Partial<Nudged> = {}): Nudged => ({
  by,
  neckFallDays,
  diameterMm: neckFallDays === null ? null : 0,
  failure: null,
  ...other,
});
const warmth: Pull = { cause: 'warmth', less: nudged(-1, 12), more: nudged(1, -9) };
const dayLength: Pull = { cause: 'day-length', less: nudged(-0.3, -1), more: nudged(0.3, 8) };
const start: Pull = { cause: 'start', less: nudged(-10, -3), more: nudged(10, 4, { diameterMm: -5 }) };
const british = speaker('metric');
const american = speaker('us');

describe('what a crop hangs on', () => {
  test('names the strongest cause, its stronger way, and what a later start does', () => {
    expect(whatItHangsOn([warmth, dayLength, start], british)).toBe(
      'What the tops hang on most here: how warm the season is. 1°C cooler, and they go over about 12 days later. ' +
        'Started 10 days later, they go over about 4 days later, on bulbs 5 mm narrower.',
    );
    expect(whatItHangsOn([dayLength, start, warmth], british)).toMatch(
      /the day length this onion needs\. 18 min more, and they go over about 8 days later\. Started/,
    );
  });

  test('says the start once where it leads', () => {
    expect(whatItHangsOn([start, warmth, dayLength], british)).toBe(
      'What the tops hang on most here: the day you start. 10 days later, and they go over about 4 days later.',
    );
  });

  test.each([
    ['bolts', 'more than a quarter of the plants run to flower'],
    ['winter-killed', 'most plants are lost to winter'],
    ['no-bulb', 'no bulbs form'],
    ['not-ripe', 'they do not go over in time'],
  ] as const)('tells a failure rather than days: %s', (failure, words) => {
    const pulls = [{ ...warmth, less: nudged(-1, 12, { failure }) }, start];
    expect(whatItHangsOn(pulls, british)).toContain(`1°C cooler, and ${words}.`);
  });

  test('says a day as one, and none as about the same day', () => {
    const still = { ...start, more: nudged(10, 0) };
    expect(whatItHangsOn([warmth, still], british)).toMatch(
      /Started 10 days later, they go over on about the same day\.$/,
    );
    expect(whatItHangsOn([warmth, { ...start, more: nudged(10, -1) }], british)).toMatch(
      /they go over about 1 day sooner\.$/,
    );
  });

  test('is said as Americans do', () => {
    expect(whatItHangsOn([warmth, start], american)).toBe(
      'What the tops hang on most here: how warm the season is. 1.8°F cooler, and they fall about 12 days later. ' +
        'Started 10 days later, they fall about 4 days later, on bulbs 0.2 in narrower.',
    );
  });
});
