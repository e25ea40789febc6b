import { medianSeasonDays, parseDay, runPlan, startMethods } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { seeSentence, standOn, topsSentence, weekSentence, weekWords } from '../../src/index.ts';
import { planOf, site } from '../frosty-place.ts';

const british = speaker('metric');
const american = speaker('us');

describe.each(startMethods)('a season from %s', (start) => {
  const plan = planOf(start);
  const summary = runPlan(site, plan);
  const rows = medianSeasonDays(site, plan);
  const neckFall = summary.neckFall.days!.p50;

  test('has a whole sentence for every week, in both Englishes', () => {
    for (let day = plan.startDay - 60; day < neckFall + 80; day += 7) {
      const stand = standOn(site, plan, day, rows);
      for (const voice of [british, american]) {
        const said = [weekSentence(summary, stand, voice), seeSentence(summary, stand, voice)];
        for (const sentence of said) if (sentence !== null) expect(sentence).toMatch(/^[A-Z][^{}]+\.$/);
        expect(topsSentence(summary, day, voice)).toMatch(day > neckFall ? /went over|fell/ : /go over|fall/);
      }
    }
  });
});

describe('what a week asks', () => {
  const summary = runPlan(site, planOf('direct-seed'));

  test('counts the years in which frost leaves none', () => {
    expect(weekWords(summary, 'lost', 0.8, british)).toContain('8 years in 10');
  });

  test('asks for no water where rain alone feeds the bed', () => {
    const dry = { ...summary, plan: { ...summary.plan, water: 'rain' as const } };
    for (const code of ['grow', 'bulb', 'dry'] as const) {
      expect(weekWords(dry, code, 0, british)).not.toMatch(/water|moist/);
      expect(weekWords(summary, code, 0, british)).toMatch(/water|moist/);
    }
  });
});

test('nothing is said of tops that do not go over', () => {
  const late = planOf('direct-seed', { startDay: parseDay('2027-08-20')! });
  const none = { ...runPlan(site, late), neckFall: { share: 0, days: null } };
  expect(topsSentence(none, late.startDay, british)).toBeNull();
});
