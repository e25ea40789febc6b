import type { SeasonSummary, SpanParts } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { spanPartsSentence, spanSentence } from '../../src/index.ts';

const british = speaker('metric');
const american = speaker('us');
/** 1 August 2027. */
const august = 20_819 + 212;
const season = (share: number): SeasonSummary =>
  ({
    neckFall: { share, days: { p10: august, p50: august + 10, p90: august + 27 } },
    bulbDiameterMm: { p10: 49, p50: 56, p90: 60 },
  }) as SeasonSummary;
const parts: SpanParts = {
  neckFallDays: { all: 27, weather: 12.6, kind: 23.9 },
  bulbDiameterMm: { all: 11.2, weather: 3.1, kind: 10.8 },
};

describe('how far a crop may be out', () => {
  test('is told of this crop, and the weather apart from what is not known of the onion', () => {
    expect(spanPartsSentence(season(1), parts, british)).toBe(
      'In 8 years in 10, tops go over within 27 days of each other, and bulbs are within 11 mm. ' +
        'The weather of the year alone would make that about 13 days and 3 mm; what is not known of this onion makes the rest.',
    );
    expect(spanPartsSentence(season(1), parts, american)).toMatch(/tops fall within 27 days .+ 0\.4 in/);
  });

  test('leaves nothing to the onion where the weather makes it all', () => {
    const all = {
      neckFallDays: { all: 19, weather: 19, kind: 0 },
      bulbDiameterMm: { all: 8, weather: 7.9, kind: 1 },
    };
    expect(spanPartsSentence(season(1), all, british)).toMatch(
      / bulbs are within 8 mm\. The weather of the year alone makes that\.$/,
    );
  });

  test('counts only years with a crop where some have none', () => {
    expect(spanPartsSentence(season(0.8), parts, british)).toMatch(
      /^In 8 in 10 of the years with a crop, tops/,
    );
    expect(spanSentence(season(0.8), 'lead', british)).toMatch(/^In 8 in 10 of the years with a crop, tops/);
  });

  test('is told by its own dates and sizes where many crops are', () => {
    const said = spanSentence(season(1), 'lead', british)?.replace(/\s/g, ' ');
    expect(said).toBe(
      'In 8 years in 10, tops of the crop named first go over 1 – 28 August, on bulbs of 49–60 mm.',
    );
    expect(spanSentence(season(1), 'best-start', american)).toMatch(
      /^In 8 years in 10, tops from the best start fall August 1/,
    );
  });

  test('is nothing where tops mostly stay up', () => {
    expect(spanPartsSentence(season(0.3), { ...parts, neckFallDays: null }, british)).toBeNull();
    expect(spanSentence(season(0.3), 'lead', british)).toBeNull();
    const never = { ...season(0), neckFall: { share: 0, days: null } };
    expect(spanSentence(never, 'lead', british)).toBeNull();
  });
});
