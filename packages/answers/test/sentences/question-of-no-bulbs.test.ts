import type { NeverBulbedAnswer, SeasonSummary } from '@neckfall/engine';
import { dayNumber } from '@neckfall/engine';
import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { beforeAll, expect, test } from 'vitest';
import { neverBulbedSaid } from '../../src/sentences/question-of-no-bulbs.ts';

beforeAll(async () => {
  await Promise.all([loadLater(), loadLanguage('es')]);
});

const today = dayNumber(2026, 11, 30);
const context = { place: 'Fargo', today, country: 'US' };

function season(good: number, startDay: number): SeasonSummary {
  return {
    plan: { type: 'northern-long', start: 'direct-seed', startDay },
    years: 30,
    outcome: good >= 0.5 ? 'good' : 'not-ripe',
    gamble: false,
    seasonShares: { good, 'no-bulb': 0, 'winter-killed': 0, bolts: 0, 'not-ripe': 1 - good, small: 0 },
    bulbDiameterMm: { p10: 60, p50: 64, p90: 70 },
    neckFall: { share: good, days: null },
    boltedPlantsShare: null,
    reason: { code: 'unripe-autumn', values: {} },
  } as unknown as SeasonSummary;
}

const answer: NeverBulbedAnswer = {
  question: 'never-bulbed',
  own: season(0.9, dayNumber(2027, 4, 30)),
  longestSunUpH: 15.9,
  stranger: null,
  late: {
    summary: season(0.2, dayNumber(2027, 6, 11)),
    bulblessShare: 0.5,
    isWinter: true,
  },
  isPlace: false,
};

test('a late sowing is told with its kind, its date and what ends it', () => {
  expect(neverBulbedSaid(answer, context, speaker('metric')).headline).toBe(
    'Fargo: most likely it was sown too late. Seed of northern long-day onions sown about 11 June or later in the summer comes to no ripe bulb before winter takes it, in 5 years in 10.',
  );
});

test('where the place is why that is said first, and a kind or a date at most after it', () => {
  const poor = { ...answer, own: season(0.1, dayNumber(2027, 5, 28)), isPlace: true, late: null };
  for (const voice of [speaker('metric'), speaker('metric', 'es')]) {
    const { headline, because } = neverBulbedSaid(poor, context, voice);
    expect(headline).toBe(voice.say('question.never.place', { place: 'Fargo' }));
    expect(because.join(' ')).not.toContain(voice.say('question.never.young'));
  }
});
