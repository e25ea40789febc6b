import type { Choice, SeasonSummary, Verdict } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import {
  adviceOfList,
  bestOfYearSentence,
  betterThanLead,
  isDoubtful,
  whereHeadline,
} from '../../src/index.ts';
import type { Told } from '../../src/sentences/where-headline.ts';

const british = speaker('metric');
const today = 20_667;

function told(type: Told['type'], verdict: Verdict, good: number, gamble = false): Told {
  const summary = {
    plan: { type, start: 'sets', startDay: today + 30 },
    years: 30,
    outcome: verdict,
    gamble,
    neckFall: { days: { p50: today + 150 } },
    bulbDiameterMm: { p50: 47 },
    seasonShares: { good },
  } as unknown as SeasonSummary;
  return { type, bestStart: 'sets', verdict, gamble, summary };
}

const fails = told('northern-long', 'bolts', 0.1);
const gamble = told('northern-long', 'small', 0.4, true);
const small = told('northern-long', 'small', 0.2);
const good = told('short', 'good', 0.7);
const say = (...kinds: Told[]) =>
  whereHeadline({ lead: kinds[0], better: betterThanLead(kinds), now: null }, 'Lyon', today, british);

describe('the headline of a place', () => {
  test('speaks ill of all onions only where none does better than the best in rank', () => {
    expect(say(fails, told('short', 'no-bulb', 0))).toMatch(/^Lyon: hardly any bulb onion does well/);
    expect(say(fails, good)).toMatch(
      /^Lyon: northern long-day onions do badly in open ground here\. Good bulbs are likelier if you buy short-day sets .+: in 7 years in 10\. Or grow bunching onions, /,
    );
    for (const other of [small, gamble]) expect(say(fails, other)).not.toContain('any bulb onion');
  });

  test('calls bulb onions a gamble, or small, only where all are', () => {
    expect(say(gamble, small)).toMatch(/^Lyon: bulb onions are a gamble here/);
    expect(say(gamble, good)).toMatch(
      /^Lyon: buy northern .+, which is a gamble: .+ likelier if you buy short-day/,
    );
    expect(say(small, fails)).toMatch(/^Lyon: expect small bulbs, about 47 mm across\. Best: /);
    expect(say(small, good)).toMatch(
      /^Lyon: buy northern .+, but expect small bulbs, about 47 mm across; .+ likelier if you buy short-day/,
    );
  });

  test('takes the surest of the others, in their order', () => {
    expect(betterThanLead([fails, small, good, told('intermediate', 'good', 0.9)])).toBe(good);
    expect(betterThanLead([good, told('short', 'good', 1)])).toBeNull();
    expect(betterThanLead([fails])).toBeNull();
    // small bulbs at a place where good ones never come are no better advice
    expect(betterThanLead([told('northern-long', 'not-ripe', 0), told('short', 'small', 0)])).toBeNull();
  });

  test('says in how many years a crop came good, and of how many', () => {
    const sure = told('northern-long', 'small', 1, true);
    expect(say(sure)).toMatch(/good bulbs come in all 30 years tried\.$/);
  });
});

test('small bulbs are told with their size, and near the limit as nearly full-sized', () => {
  expect(say(small)).toMatch(/^Lyon: expect small bulbs, about 47 mm across\. Best: /);
  expect(say(told('northern-long', 'small', 0.35))).toContain(
    'bulbs come near to full size, about 47 mm across, and reach it in 4 years in 10.',
  );
});

describe('today', () => {
  const now = told('northern-long', 'good', 0.6);
  const short = told('short', 'good', 0.9);
  const startingToday = {
    ...now,
    summary: { ...now.summary, plan: { ...now.summary.plan, startDay: today } },
  } as Told;

  test('is told before what would be best in another year', () => {
    const advice = { lead: short, better: null, now: startingToday };
    expect(whereHeadline(advice, 'Lyon', today, british)).toMatch(
      /^Lyon: buy northern long-day sets and plant them now; /,
    );
  });

  test('leaves the best of the year to a second sentence, unless it is just that', () => {
    const of = (lead: Told, now: Told | null) => bestOfYearSentence({ lead, now }, today, british);
    expect(of(short, now)).toMatch(/^Best of the whole year: buy short-day sets and plant them around /);
    expect(of(now, startingToday)).toMatch(/^Its best day of the year here is around /);
    expect(of(now, now)).toBeNull();
    expect(of(now, null)).toBeNull();
  });
});

describe('a headline that knows of nothing good', () => {
  const ranked = (...kinds: Told[]) => kinds.map(({ summary }) => ({ summary })) as Choice[];
  const place = { lead: fails, better: null, now: null };

  test('leaves a doubt where the first by name does well, and only there', () => {
    expect(isDoubtful(place, ranked(good))).toBe(true);
    expect(isDoubtful(place, ranked(small, good))).toBe(false);
    expect(isDoubtful(place, ranked(gamble))).toBe(false);
    for (const known of ['lead', 'better', 'now'])
      expect(isDoubtful({ ...place, [known]: good }, ranked(good))).toBe(false);
  });
});

describe('the headline of a list', () => {
  const choices = (...kinds: Told[]) =>
    kinds.map(({ type, bestStart, summary }) => ({ kind: { type, start: bestStart }, summary })) as Choice[];
  const which = (...kinds: Told[]) =>
    whereHeadline(adviceOfList(choices(...kinds), null), 'Lyon', today, british, 'list');

  test('speaks of those in it: others may do well', () => {
    expect(which(fails)).toMatch(/^Lyon: none of these onions does well/);
    expect(which(gamble)).toMatch(/^Lyon: these onions are a gamble here/);
    expect(which(small)).toMatch(/^Lyon: expect small bulbs of these/);
  });

  test('does not say none above one that is good', () => {
    expect(which(fails, good)).toContain('likelier if you buy short-day sets');
  });
});
