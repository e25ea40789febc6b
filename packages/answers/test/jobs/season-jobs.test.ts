import { medianSeasonDays, parseDay, runPlan, startMethods } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { seasonJobs, type WeekCode, weekOf } from '../../src/jobs/index.ts';
import { planOf, site } from '../frosty-place.ts';

describe.each(startMethods)('a season from %s', (start) => {
  const plan = planOf(start);
  const summary = runPlan(site, plan);
  const rows = medianSeasonDays(site, plan);
  const jobs = seasonJobs(summary, rows);
  const neckFall = summary.neckFall.days!.p50;

  test('is told without gaps from the preparation to the store', () => {
    expect(jobs[0].code).toBe('prepare');
    for (const [at, job] of jobs.entries()) {
      expect(job.to).toBeGreaterThanOrEqual(job.from);
      if (at > 0) expect(job.from).toBe(jobs[at - 1].to + 1);
    }
    const on = (day: number) => jobs.find(({ from, to }) => day >= from && day <= to)?.code;
    expect(on(plan.startDay)).toBe('start');
    expect(on(summary.onset.days!.p50 + 1)).toBe('bulb');
    expect(on(neckFall)).toBe('lift');
    expect(jobs.find(({ code }) => code === 'lift')?.from).toBe(neckFall);
    expect(jobs.at(-1)?.code).toBe('cure');
    expect(jobs.some(({ code }) => code === 'tray')).toBe(start === 'raised-seedlings');
  });
});

describe('what a week asks', () => {
  const plan = planOf('direct-seed');
  const summary = runPlan(site, plan);
  const week = (day: number, more: { lostShare?: number; tempMeanC?: number } = {}): WeekCode =>
    weekOf(summary, { day, lostShare: 0, tempMeanC: 15, ...more });
  const growing = Math.round((summary.emergence.days!.p50 + summary.onset.days!.p50) / 2) - 10;

  test('is rest in the cold, and a look at the bed where frost mostly leaves none', () => {
    expect(week(growing)).toBe('grow');
    expect(week(growing, { tempMeanC: 1 })).toBe('winter');
    expect(week(growing, { lostShare: 0.8, tempMeanC: 1 })).toBe('lost');
  });

  test('is to dry what was lifted, whenever that was, and then nothing', () => {
    const lifted = (day: number) => weekOf(summary, { day, lostShare: 0, tempMeanC: 15 }, growing + 5);
    expect([growing, growing + 5, growing + 32, growing + 33].map(lifted)).toEqual([
      'grow',
      'cure',
      'cure',
      'over',
    ]);
  });

  test('is to pull what makes no bulb, and an end', () => {
    const short = planOf('direct-seed', { type: 'northern-long', startDay: parseDay('2027-08-20')! });
    const none = { ...runPlan(site, short) };
    none.onset = { share: 0, days: null };
    none.neckFall = { share: 0, days: null };
    const at = (days: number) => weekOf(none, { day: short.startDay + days, lostShare: 0, tempMeanC: 15 });
    expect(at(60)).toBe('green');
    expect(at(400)).toBe('over');
  });
});
