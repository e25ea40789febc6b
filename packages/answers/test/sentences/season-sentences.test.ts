import { type SeasonSummary, type Verdict, verdicts } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { seasonHeadline, sharesSentence } from '../../src/index.ts';

const british = speaker('metric');
const dates = { share: 1, days: { p10: 20_900, p50: 20_910, p90: 20_920 } };

/** A crop that comes to one end in a share of the years, and to good bulbs in the others. */
function ending(outcome: Verdict, share: number, gamble = false, years = 30): SeasonSummary {
  const shares = Object.fromEntries(verdicts.map((verdict) => [verdict, verdict === outcome ? share : 0]));
  if (outcome !== 'good') shares.good = 1 - share;
  return {
    plan: { type: 'short', start: 'sets', startDay: 20_800 },
    outcome,
    gamble,
    years,
    seasonShares: shares,
    neckFall: dates,
    bulbDiameterMm: { p10: 40, p50: 50, p90: 60 },
  } as unknown as SeasonSummary;
}

describe('what a crop comes to', () => {
  test.each([
    ['good', 'make good bulbs in 8 years in 10; tops go over around '],
    ['small', 'make small bulbs in 8 years in 10, about 50 mm across; '],
    ['no-bulb', 'stay green in 8 years in 10: no bulbs. Eat them as spring onions.'],
    ['bolts', 'run to flower in 8 years in 10: too many plants for a crop that keeps.'],
    ['winter-killed', 'are lost to winter in 8 years in 10.'],
    ['not-ripe', 'stay thick-necked and unfinished in 8 years in 10. Eat them fresh; '],
  ] as const)('is said of its commonest end: %s', (outcome, words) => {
    const said = seasonHeadline(ending(outcome, 0.8), null, 'Lyon', british);
    expect(said).toContain(`Lyon: short-day onions from sets planted on 13 December ${words}`);
  });

  test.each([
    ['small', 'bulbs stay small'],
    ['no-bulb', 'no bulbs form'],
    ['bolts', 'plants run to flower'],
    ['winter-killed', 'winter takes the plants'],
    ['not-ripe', 'necks stay thick'],
  ] as const)('is a gamble with what mostly goes wrong: %s', (outcome, words) => {
    const said = seasonHeadline(ending(outcome, 0.6, true), 'Rumba', 'Lyon', british);
    expect(said).toMatch(/^Lyon: Rumba onions .+ are a gamble: good bulbs in 4 years in 10\. /);
    expect(said).toContain(`What mostly goes wrong: ${words}.`);
  });
});

describe('how the years go', () => {
  test.each([
    ['small', 'good bulbs in 7 years in 10 and small bulbs in 3 years in 10'],
    ['no-bulb', 'good bulbs in 7 years in 10 and leaves but no bulbs in 3 years in 10'],
    ['bolts', 'good bulbs in 7 years in 10 and plants that run to flower in 3 years in 10'],
    ['winter-killed', 'good bulbs in 7 years in 10 and a crop lost to winter in 3 years in 10'],
    ['not-ripe', 'good bulbs in 7 years in 10 and thick-necked bulbs in 3 years in 10'],
  ] as const)('is said of good years and of others: %s', (outcome, words) => {
    expect(sharesSentence(ending(outcome, 0.3), british)).toBe(`Year by year: ${words}.`);
  });

  test('is told in tenths that come to ten', () => {
    expect(sharesSentence(ending('small', 0.45), british)).toBe(
      'Year by year: good bulbs in 6 years in 10 and small bulbs in 4 years in 10.',
    );
  });

  test('is told of all years in words that can be taken one way only', () => {
    expect(sharesSentence(ending('no-bulb', 1), british)).toBe(
      'Year by year: leaves but no bulbs in all 30 years tried.',
    );
    expect(sharesSentence(ending('bolts', 1, false, 1), british)).toBe(
      'Year by year: plants that run to flower in the one year tried.',
    );
  });
});
