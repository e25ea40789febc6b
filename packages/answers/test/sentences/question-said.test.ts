import { dayNumber, type FromAbroad, type SeasonSummary, type StartTrial } from '@neckfall/engine';
import { loadLanguage, loadLater, speaker } from '@neckfall/words';
import { beforeAll, describe, expect, test } from 'vitest';
import { questionSaid } from '../../src/index.ts';

beforeAll(async () => {
  await Promise.all([loadLater(), loadLanguage('es')]);
});

const metric = speaker('metric');
const context = { place: 'Sevilla', today: dayNumber(2026, 11, 30), country: 'ES' };

function season(good: number, outcome: SeasonSummary['outcome'], sizeMm = 60): SeasonSummary {
  return {
    plan: { type: 'short', start: 'direct-seed', startDay: dayNumber(2027, 3, 1) },
    years: 30,
    outcome,
    gamble: false,
    seasonShares: { good, 'no-bulb': 0 },
    bulbDiameterMm: { p10: sizeMm, p50: sizeMm, p90: sizeMm },
    neckFall: { share: good, days: null },
    boltedPlantsShare: null,
    leavesMadeAtOnset: null,
  } as unknown as SeasonSummary;
}

describe('onions from abroad', () => {
  const kind = (from: FromAbroad['from'], good: number, outcome: SeasonSummary['outcome']): FromAbroad => ({
    from,
    summary: season(good, outcome),
    neededSunUpH: 14,
  });
  const headline = (...kinds: FromAbroad[]) =>
    questionSaid(
      { question: 'from-abroad', own: season(1, 'good'), longestSunUpH: 14.7, kinds },
      context,
      metric,
    ).headline;

  test('that end alike are told together', () => {
    expect(headline(kind('tropics', 1, 'good'), kind('north', 0.9, 'good'))).toBe(
      'Sevilla: onions of the tropics and of the far north will both do here: of the first, good bulbs come in all 30 years tried; of the second, in 9 years in 10.',
    );
    expect(headline(kind('tropics', 0, 'no-bulb'), kind('north', 0, 'no-bulb'))).toContain('neither onions');
  });

  test('that end otherwise are told apart', () => {
    expect(headline(kind('tropics', 1, 'good'), kind('north', 0.2, 'small'))).toBe(
      'Sevilla: an onion of the tropics will do here (good bulbs in all 30 years tried); an onion of the far north stays small here (about 60 mm, good bulbs in 2 years in 10).',
    );
  });
});

test('where bulbs stay small whatever is done, faults are what makes them smaller still', () => {
  const { because } = questionSaid(
    {
      question: 'too-small',
      own: season(0.1, 'small', 50),
      trials: [{ cause: 'shaded', summary: season(0, 'small', 40) }],
    },
    context,
    metric,
  );
  expect(because[0]).toBe('What makes them smaller still: shade with 5 hours of sun (40 mm).');
});

test('odds of the first sowing and the best that are the same are said once', () => {
  const of = season(1, 'good');
  const starts = {
    starts: [{ summary: of } as StartTrial],
    windows: [],
    best: 60,
    reason: { code: 'window', values: {} },
  };
  const { because } = questionSaid(
    {
      question: 'start-indoors',
      starts: starts as never,
      stretch: { first: of, best: of, last: of, isAllYear: false },
      bed: of,
    },
    context,
    metric,
  );
  expect(because[0]).toBe('Good bulbs come in all 30 years tried, from the first sowing as from the best.');
});

describe('whether it is too late', () => {
  const lead = {
    class: 'long',
    type: 'northern-long',
    verdict: 'good',
    isAtHome: true,
    summary: season(1, 'good'),
  };
  const starts = { class: 'long', type: 'northern-long', start: 'sets', verdict: 'small' } as const;
  const headline = (stillGoodUntil: number | null, nextFrom: number | null) =>
    questionSaid(
      {
        question: 'too-late',
        classes: [lead as never],
        now: null,
        today: [{ ...starts, stillGoodUntil, nextFrom }],
        starts: {} as never,
      },
      context,
      metric,
    ).headline;

  test('is answered once, in time or not', () => {
    expect(headline(dayNumber(2026, 12, 3), null)).toBe(
      'Sevilla: no, not yet. Still in time: sets until 3 December.',
    );
    expect(headline(null, dayNumber(2027, 3, 1))).toMatch(
      /^Sevilla: yes, for now\. Nothing to start just now/,
    );
  });

  test('is no matter of the date where no start ever does well', () => {
    expect(headline(null, null)).toMatch(/^Sevilla: the date is not what matters\. However long-day onions/);
  });
});
