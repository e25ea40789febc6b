import { verdicts, weekStarts } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runsAround } from '../../src/facts/runs-alike.ts';
import { runsAlike, whenHeadline, windowEdges } from '../../src/index.ts';
import { aYearOfStarts, goodBetween } from './a-year-of-starts.ts';

const british = speaker('metric');
const autumn = goodBetween(38, 6);
const spring = goodBetween(8, 16);

describe('the headline of a year of starts', () => {
  test('names a window over New Year by both its ends', () => {
    const said = whenHeadline(autumn, null, 'Pencarreg Bank', british);
    expect(said).toMatch(/^Pencarreg Bank: short-day onions .+ from 24 September to 12 February/);
  });

  test('names a place that is called none', () => {
    expect(whenHeadline(autumn, null, 'none', british)).toMatch(/^none: short-day onions /);
  });

  test('names the class where spring and autumn start different types of it', () => {
    const starts = autumn.starts.map((trial, week) => {
      const plan = { ...trial.summary.plan, type: week < 26 ? 'northern-long' : 'early-long' } as const;
      return { ...trial, summary: { ...trial.summary, plan } };
    });
    const mixed = { ...autumn, starts };
    expect(whenHeadline(mixed, null, null, british)).toMatch(/^Long-day onions /);
    expect(whenHeadline(mixed, null, 'Lyon', british)).toMatch(/^Lyon: long-day onions /);
    expect(whenHeadline(mixed, 'Copra', null, british)).toMatch(/^Copra onions /);
  });

  test('begins with the onion where the place is known', () => {
    expect(whenHeadline(autumn, null, null, british)).toMatch(/^Short-day onions set out as bought plants /);
    expect(whenHeadline(autumn, 'Copra', null, british)).toMatch(/^Copra onions /);
  });

  test('says so where every week is good, and where none is', () => {
    const all = aYearOfStarts(
      weekStarts.map(() => 'good'),
      [{ from: 1, to: 358, best: 8 }],
    );
    expect(whenHeadline(all, null, null, british)).toContain(
      'make good bulbs in 8 years in 10, whichever of the 52 weeks tried they are started in; best around 8 January',
    );
    const none = aYearOfStarts(
      weekStarts.map(() => 'small'),
      [],
    );
    expect(whenHeadline(none, null, null, british)).toContain(
      'make no good bulbs, whichever week of the year',
    );
  });

  test('does not say none above weeks that are good now and then', () => {
    const rare = aYearOfStarts(
      weekStarts.map((_, week) => (week === 9 ? 'good' : 'small')),
      [],
    );
    expect(whenHeadline(rare, null, 'Lyon', british)).toBe(
      'Lyon: short-day onions set out as bought plants make good bulbs now and then, but from no week of the year often enough to count on.',
    );
  });

  test('says how seldom the worst of all weeks is good', () => {
    const all = aYearOfStarts(
      weekStarts.map((_, week) => (week === 9 ? 'small' : 'good')),
      [{ from: 1, to: 358, best: 8 }],
    );
    expect(whenHeadline(all, null, null, british)).toContain('in 0–8 years in 10');
  });
});

describe('what goes wrong beside a window', () => {
  test.each([
    ['over New Year', autumn],
    ['within the year', spring],
  ])('is told of starts before and after it, %s', (_, answer) => {
    const [window] = answer.windows;
    const edges = windowEdges(answer, window, british);
    expect(edges?.earlier).toContain(`Started before ${british.dayOfYear(window.from)}: run to flower in`);
    expect(edges?.later).toContain(`Started later than ${british.dayOfYear(window.to)}: small bulbs in`);
    expect(edges?.later).toContain('in 8 years in 10');
  });

  test('names what keeps people from starting, not what would come of it', () => {
    const answer = goodBetween(8, 16);
    const [{ from, to }] = answer.windows;
    for (const trial of answer.starts) {
      if (trial.dayOfYear < from) trial.hindrance = 'cold-bed';
      if (trial.dayOfYear > to && trial.dayOfYear < to + 40) trial.hindrance = 'no-sets';
    }
    const edges = windowEdges(answer, answer.windows[0], british);
    expect(edges).toEqual({
      earlier: `Started before ${british.dayOfYear(from)}: bed too cold for roots.`,
      later: `Started later than ${british.dayOfYear(to)}: no sound sets to be had.`,
    });
  });

  test('says how often a gamble goes well', () => {
    const answer = goodBetween(8, 16);
    for (const { dayOfYear, summary } of answer.starts) {
      if (dayOfYear > answer.windows[0].to) {
        Object.assign(summary, { gamble: true, seasonShares: { ...summary.seasonShares, good: 0.4 } });
      }
    }
    const edges = windowEdges(answer, answer.windows[0], british);
    expect(edges?.later).toContain('a gamble, good bulbs in 4 years in 10.');
  });

  test('is nothing where all weeks are alike', () => {
    const all = aYearOfStarts(
      weekStarts.map(() => 'good'),
      [{ from: 1, to: 358, best: 8 }],
    );
    expect(windowEdges(all, all.windows[0], british)).toBeNull();
  });
});

describe('runs of weeks alike', () => {
  const years = fc.array(fc.constantFrom(...verdicts), { minLength: 52, maxLength: 52 });

  test('hold every week once, in order, alike inside and unlike beside', () => {
    fc.assert(
      fc.property(years, (outcomes) => {
        const { starts } = aYearOfStarts(outcomes, []);
        const runs = runsAlike(starts);
        expect(runs.flat()).toEqual(starts);
        runs.forEach((run, i) => {
          expect(new Set(run.map(({ summary }) => summary.outcome)).size).toBe(1);
          if (i > 0) expect(run[0].summary.outcome).not.toBe(runs[i - 1][0].summary.outcome);
        });
      }),
      { seed: 5 },
    );
  });

  test('are one over New Year in a year taken as a circle', () => {
    fc.assert(
      fc.property(years, (outcomes) => {
        const { starts } = aYearOfStarts(outcomes, []);
        const runs = runsAround(starts);
        expect(runs.flat().length).toBe(52);
        if (runs.length > 1) {
          expect(runs[0][0].summary.outcome).not.toBe(runs.at(-1)?.[0].summary.outcome);
        }
      }),
      { seed: 5 },
    );
  });
});
