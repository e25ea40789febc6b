import {
  medianSeasonDays,
  openSite,
  type Plan,
  parseDay,
  planDefaults,
  runPlan,
  type StartMethod,
  startMethods,
} from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import {
  seasonJobs,
  seeSentence,
  standOn,
  topsSentence,
  type WeekCode,
  weekOf,
  weekSentence,
  weekWords,
} from '../../src/index.ts';

const monthly = (values: number[]) => Float64Array.from(values);
const steady = (value: number) => new Float64Array(12).fill(value);
/** An invented place with frosty winters and warm summers. */
const site = openSite({
  climate: {
    latitudeDeg: 47,
    longitudeDeg: 4,
    elevationM: 200,
    tempMeanC: monthly([2, 3, 7, 11, 15, 18, 20, 20, 16, 11, 6, 3]),
    tempRangeC: steady(9),
    rainMm: steady(60),
    wetDays: steady(12),
    relativeHumidityPct: steady(75),
    sunshinePct: steady(45),
    wind10mMs: steady(3),
    frostNights: monthly([18, 15, 8, 2, 0, 0, 0, 0, 0, 1, 7, 16]),
    minTempSdC: steady(4),
  },
  years: 20,
  seed: 1,
});
const dates: Record<StartMethod, string> = {
  'direct-seed': '2027-03-25',
  'raised-seedlings': '2027-02-15',
  'bought-transplants': '2027-04-05',
  sets: '2027-03-28',
};
const planOf = (start: StartMethod, more: Partial<Plan> = {}): Plan => ({
  ...planDefaults,
  type: 'northern-long',
  start,
  startDay: parseDay(dates[start])!,
  ...more,
});
const british = speaker('metric');
const american = speaker('us');

describe.each(startMethods)('a season from %s', (start) => {
  const plan = planOf(start);
  const summary = runPlan(site, plan);
  const rows = medianSeasonDays(site, plan);
  const jobs = seasonJobs(summary, rows);
  const neckFall = summary.neckFall.p50!;

  test('is told without gaps from the preparation to the store', () => {
    expect(jobs[0].code).toBe('prepare');
    for (const [at, job] of jobs.entries()) {
      expect(job.to).toBeGreaterThanOrEqual(job.from);
      if (at > 0) expect(job.from).toBe(jobs[at - 1].to + 1);
    }
    const on = (day: number) => jobs.find(({ from, to }) => day >= from && day <= to)?.code;
    expect(on(plan.startDay)).toBe('start');
    expect(on(summary.onset.p50! + 1)).toBe('bulb');
    expect(on(neckFall)).toBe('lift');
    expect(jobs.find(({ code }) => code === 'lift')?.from).toBe(neckFall);
    expect(jobs.at(-1)?.code).toBe('cure');
    expect(jobs.some(({ code }) => code === 'tray')).toBe(start === 'raised-seedlings');
  });

  test('counts the years in which tops are over, and the leaves of the others', () => {
    const at = (day: number) => standOn(site, plan, day, rows);
    expect(at(plan.startDay - 1)).toMatchObject({
      leavesGreen: null,
      bulbMm: null,
      fallenShare: 0,
      lostShare: 0,
    });
    expect(at(summary.neckFall.p90! + 40).fallenShare).toBe(summary.neckFall.share);
    const half = at(neckFall).fallenShare;
    expect(half).toBeGreaterThanOrEqual(0.4);
    expect(half).toBeLessThanOrEqual(0.75);
    const { leavesGreen, bulbMm } = at(Math.round((summary.onset.p90! + summary.neckFall.p10!) / 2));
    expect(leavesGreen!.low).toBeGreaterThan(1);
    expect(leavesGreen!.high).toBeGreaterThanOrEqual(leavesGreen!.low);
    expect(bulbMm!.low).toBeGreaterThan(5);
    expect(bulbMm!.high).toBeLessThan(summary.bulbDiameterMm.p90! + 1);
  });

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
  const plan = planOf('direct-seed');
  const summary = runPlan(site, plan);
  const week = (day: number, more: { lostShare?: number; tempMeanC?: number } = {}): WeekCode =>
    weekOf(summary, { day, lostShare: 0, tempMeanC: 15, ...more });
  const growing = Math.round((summary.emergence.p50! + summary.onset.p50!) / 2) - 10;

  test('is rest in the cold, and a look at the bed where frost mostly leaves none', () => {
    expect(week(growing)).toBe('grow');
    expect(week(growing, { tempMeanC: 1 })).toBe('winter');
    expect(week(growing, { lostShare: 0.8, tempMeanC: 1 })).toBe('lost');
    expect(weekWords(summary, 'lost', 0.8, british)).toContain('8 years in 10');
  });

  test('is to pull what makes no bulb, and an end', () => {
    const short = planOf('direct-seed', { type: 'northern-long', startDay: parseDay('2027-08-20')! });
    const none = { ...runPlan(site, short) };
    none.onset = { ...none.onset, p10: null, p50: null, p90: null, share: 0 };
    none.neckFall = { p10: null, p50: null, p90: null, share: 0 };
    const at = (days: number) => weekOf(none, { day: short.startDay + days, lostShare: 0, tempMeanC: 15 });
    expect(at(60)).toBe('green');
    expect(at(400)).toBe('over');
    expect(topsSentence(none, short.startDay, british)).toBeNull();
  });

  test('asks for no water where rain alone feeds the bed', () => {
    const dry = { ...summary, plan: { ...summary.plan, water: 'rain' as const } };
    for (const code of ['grow', 'bulb', 'dry'] as const) {
      expect(weekWords(dry, code, 0, british)).not.toMatch(/water|moist/);
      expect(weekWords(summary, code, 0, british)).toMatch(/water|moist/);
    }
  });
});
