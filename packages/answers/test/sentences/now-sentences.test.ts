import { parseDay, runPlan, startMethods } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import { seeSentence, standOn, topsSentence } from '../../src/index.ts';
import { planOf, site } from '../frosty-place.ts';

const british = speaker('metric');
const american = speaker('us');

describe.each(startMethods)('a season from %s', (start) => {
  const plan = planOf(start);
  const summary = runPlan(site, plan);
  const neckFall = summary.neckFall.days!.p50;
  const see = (day: number, voice = british) => seeSentence(summary, standOn(site, plan, day), voice);

  test('has a whole sentence for what is seen in every week, in both Englishes', () => {
    for (let day = plan.startDay - 60; day < neckFall + 80; day += 7) {
      for (const voice of [british, american]) {
        const sentence = see(day, voice);
        if (sentence !== null) expect(sentence).toMatch(/^[A-Z][^{}]+\.$/);
        expect(topsSentence(summary, day, voice)).toMatch(day > neckFall ? /went over|fell/ : /go over|fall/);
      }
    }
  });

  test('says when a bare bed comes up, and nothing before its start or once bulbs are out of their bed', () => {
    expect(see(plan.startDay - 10)).toBeNull();
    expect(see(neckFall + 14)).toBeNull();
    const up = summary.emergence.days!.p50;
    if (start === 'direct-seed') expect(see(up - 1)).toContain('Nothing shows yet');
    if (start === 'direct-seed' || start === 'sets') expect(see(up + 20)).toContain('You should see');
  });
});

test('counts the years in which frost leaves none', () => {
  const plan = planOf('direct-seed');
  const summary = runPlan(site, plan);
  const stand = { ...standOn(site, plan, summary.emergence.days!.p50 + 20), lostShare: 0.8 };
  expect(seeSentence(summary, stand, british)).toContain('8 years in 10');
});

test('nothing is said of tops that do not go over', () => {
  const late = planOf('direct-seed', { startDay: parseDay('2027-08-20')! });
  const none = { ...runPlan(site, late), neckFall: { share: 0, days: null } };
  expect(topsSentence(none, late.startDay, british)).toBeNull();
});
