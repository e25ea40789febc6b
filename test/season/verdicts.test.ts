import { describe, expect, test } from 'vitest';
import {
  dayNumber,
  openSite,
  type PlanForm,
  planDefaults,
  runPlan,
  type Verdict,
  verdicts,
} from '../../packages/engine/src/index.ts';
import { climateOf } from './places.ts';

type Case = {
  verdict: Verdict;
  place: string;
  at: [number, number];
  plan: Pick<PlanForm, 'type' | 'start'> & Partial<PlanForm>;
  /** Month and day of the start. */
  on: [number, number];
  why: string;
};

/** Places and plans chosen because their end is beyond doubt; sources where there is one, else common practice. */
const cases: Case[] = [
  {
    verdict: 'no-bulb',
    place: 'Singapore',
    at: [1.35, 103.82],
    plan: { type: 'northern-long', start: 'sets' },
    on: [1, 8],
    why: 'long-day sets under days of 12 hours stay green (common practice, no source)',
  },
  {
    verdict: 'no-bulb',
    place: 'Nashik',
    at: [20, 73.78],
    plan: { type: 'northern-long', start: 'raised-seedlings' },
    on: [10, 20],
    why: 'the longest day is 13.4 hours; northern types ask for 14–16 (common practice, no source)',
  },
  {
    verdict: 'winter-killed',
    place: 'Minneapolis',
    at: [44.98, -93.27],
    plan: { type: 'intermediate', start: 'direct-seed' },
    on: [8, 15],
    why: 'nights below −20 °C every winter in an open bed (common practice, no source)',
  },
  {
    verdict: 'winter-killed',
    place: 'Edmonton',
    at: [53.55, -113.5],
    plan: { type: 'intermediate', start: 'direct-seed' },
    on: [9, 1],
    why: 'small plants before a winter of −30 °C (common practice, no source)',
  },
  {
    verdict: 'bolts',
    place: 'Sapporo',
    at: [43.06, 141.35],
    plan: { type: 'early-long', start: 'sets', setSizeMm: 24, setStore: 'cold' },
    on: [4, 20],
    why: '71 % of sets of 18–24 mm and 97 % of those from 25 mm flowered (Sapporo 1949–50)',
  },
  {
    verdict: 'bolts',
    place: 'London',
    at: [51.51, -0.13],
    plan: { type: 'northern-long', start: 'sets', setSizeMm: 28, setStore: 'cold' },
    on: [3, 20],
    why: 'sets this large from a cold store run to seed (Sapporo 1949–50; common practice)',
  },
  {
    verdict: 'not-ripe',
    place: 'Oulu',
    at: [65.01, 25.47],
    plan: { type: 'northern-long', start: 'direct-seed' },
    on: [5, 25],
    why: 'sown so late this far north, autumn comes before the tops fall (common practice, no source)',
  },
  {
    verdict: 'small',
    place: 'Stockholm',
    at: [59.33, 18.07],
    plan: { type: 'short', start: 'direct-seed' },
    on: [5, 15],
    why: 'under long days a short-day type bulbs as soon as it is old enough, on few leaves (common practice, no source)',
  },
  {
    verdict: 'small',
    place: 'Dublin',
    at: [53.35, -6.26],
    plan: { type: 'intermediate', start: 'direct-seed' },
    on: [5, 20],
    why: 'the same, sown late (common practice, no source)',
  },
  {
    verdict: 'good',
    place: 'Lyon',
    at: [45.76, 4.84],
    plan: { type: 'early-long', start: 'sets' },
    on: [3, 20],
    why: 'sets of a long-day type in March, what gardeners there do (common practice, no source)',
  },
  {
    verdict: 'good',
    place: 'Sacramento',
    at: [38.58, -121.49],
    plan: { type: 'intermediate', start: 'direct-seed' },
    on: [10, 20],
    why: 'autumn-sown intermediate types of the Central Valley (common practice, no source)',
  },
];

describe('every verdict is found where a grower would expect it', () => {
  test.each(cases)('$verdict: $place, $plan.type, $plan.start: $why', ({ verdict, at, plan, on }) => {
    const site = openSite({ climate: climateOf(...at), years: 20, seed: 1 });
    const summary = runPlan(site, { ...planDefaults, ...plan, startDay: dayNumber(2027, ...on) });
    expect(summary.outcome, JSON.stringify(summary.seasonShares)).toBe(verdict);
  });

  test('no verdict is left out', () => {
    expect(new Set(cases.map(({ verdict }) => verdict))).toEqual(new Set(verdicts));
  });
});
