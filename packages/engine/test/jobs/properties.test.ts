import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plans, points } from '../../../../test/season/any-plan.ts';
import { climateOf } from '../../../../test/season/places.ts';
import {
  type Job,
  type JobName,
  jobsInWeek,
  jobsOf,
  type Kept,
  type MonthlyClimate,
  openSite,
  type Plan,
  runPlan,
  type Site,
  storeClimateOf,
  tendOf,
  warmed,
} from '../../src/index.ts';
import { groundUnsaid } from '../../src/tend/index.ts';

const keptAt = ({ climate }: Site) =>
  ({ keepsMonths: [3, 5], store: storeClimateOf(climate, 'shed') }) satisfies Kept;

const runs = { numRuns: 80, seed: 20270503 };

/** Work on any crop anywhere, looked at on a day before, in or after its season. */
function anyJobs(check: (jobs: Job[], plan: Plan, today: number, onset: number | null) => void) {
  fc.assert(
    fc.property(points, plans, fc.integer({ min: -200, max: 700 }), ([lat, lon], form, after) => {
      const plan = form as Plan;
      const site = openSite({ climate: climateOf(lat, lon), years: 5, seed: 1 });
      const summary = runPlan(site, plan);
      const today = plan.startDay + after;
      const crop = { site, plan, summary, ground: groundUnsaid, observations: [], today, liftedOn: null };
      check(
        jobsOf({ ...tendOf(crop, keptAt(site)), marks: [] }),
        plan,
        today,
        summary.onset.share >= 0.5 ? (summary.onset.days?.p50 ?? null) : null,
      );
    }),
    runs,
  );
}

/** Work that is done in this order, wherever both are. */
const orders: readonly (readonly JobName[])[] = [
  ['sow', 'prick-out', 'harden', 'plant', 'feed', 'feed-stop', 'lift'],
  ['sow', 'trim', 'harden', 'plant', 'weed'],
  ['plant', 'water-stop', 'lift', 'dry', 'clean', 'store', 'check-store'],
  ['check-tops', 'lift'],
];

test('jobs come in their order, whatever the plan, the place and the day', () => {
  let pairs = 0;
  anyJobs((jobs) => {
    for (const order of orders) {
      // ground is fed before the crop goes in
      const crop = jobs.filter(({ why }) => !why.code.startsWith('feed-ground'));
      const found = order.flatMap((name) => crop.filter((job) => job.name === name));
      for (let at = 1; at < found.length; at++) {
        const [earlier, later] = [found[at - 1], found[at]];
        pairs++;
        const both = JSON.stringify([earlier, later]);
        expect(later.best, both).toBeGreaterThanOrEqual(earlier.best);
        expect(later.to, both).toBeGreaterThanOrEqual(earlier.to);
        if (order[0] === 'sow' && found.indexOf(later) < 4 && later.name !== 'feed' && later.name !== 'lift')
          expect(later.best, both).toBeGreaterThan(earlier.best);
      }
    }
  });
  expect(pairs).toBeGreaterThan(500);
});

test('each has days in order and an id of its own, and they are told by best day', () => {
  anyJobs((jobs) => {
    expect(jobs.length).toBeGreaterThan(0);
    expect(new Set(jobs.map(({ id }) => id)).size).toBe(jobs.length);
    for (const job of jobs) {
      expect([job.from, job.best, job.to].every(Number.isInteger), JSON.stringify(job)).toBe(true);
      expect(job.best).toBeGreaterThanOrEqual(job.from);
      expect(job.to).toBeGreaterThanOrEqual(job.best);
      for (const value of Object.values(job.why.values))
        expect(typeof value === 'string' || Number.isFinite(value), JSON.stringify(job)).toBe(true);
    }
    const best = jobs.map((job) => job.best);
    expect(best).toEqual(best.toSorted((a, b) => a - b));
  });
});

test('nothing is due before the crop is there, and no feed once bulbs have started', () => {
  anyJobs((jobs, plan, _today, onset) => {
    for (const job of jobs) {
      const before = job.name === 'feed' ? 14 : job.name === 'sow' || job.name === 'plant' ? 3 : 0;
      expect(job.from, JSON.stringify(job)).toBeGreaterThanOrEqual(plan.startDay - before);
      if (onset !== null && job.name === 'feed' && !job.why.code.startsWith('feed-ground'))
        expect(job.to).toBeLessThan(onset);
      if (onset !== null && job.name === 'feed-stop') expect(job.to).toBeLessThanOrEqual(onset);
    }
  });
});

test('a week has five jobs at most, all of them open then; without one, what comes next', () => {
  let weeks = 0;
  anyJobs((jobs, _plan, today) => {
    const { due, next } = jobsInWeek(jobs, today);
    expect(due.length).toBeLessThanOrEqual(5);
    for (const { from, to, state } of due) {
      expect(from).toBeLessThan(today + 7);
      expect(to).toBeGreaterThanOrEqual(today);
      expect(['now', 'coming']).toContain(state);
    }
    if (due.length > 0) expect(next).toEqual([]);
    else for (const { from } of next) expect(from).toBeGreaterThanOrEqual(today + 7);
    weeks += due.length > 0 ? 1 : 0;
  });
  expect(weeks).toBeGreaterThan(10);
});

test('a job keeps its id while the forecast moves its days', () => {
  let moved = 0;
  fc.assert(
    fc.property(points, plans, fc.constantFrom(-1, 1), ([lat, lon], form, by) => {
      const plan = form as Plan;
      const jobsIn = (climate: MonthlyClimate) => {
        const site = openSite({ climate, years: 5, seed: 1 });
        const today = plan.startDay + 30;
        const summary = runPlan(site, plan);
        const crop = { site, plan, summary, ground: groundUnsaid, observations: [], today, liftedOn: null };
        return jobsOf({ ...tendOf(crop, keptAt(site)), marks: [] });
      };
      const climate = climateOf(lat, lon);
      const warmer = new Map(jobsIn(warmed(climate, by)).map((job) => [job.id, job]));
      for (const job of jobsIn(climate)) {
        const same = warmer.get(job.id);
        if (!same) continue;
        expect(same.name).toBe(job.name);
        // a flight of pests is the same one of the same year
        expect(same.why.values.flight, job.id).toBe(job.why.values.flight);
        moved += same.best === job.best ? 0 : 1;
      }
    }),
    { ...runs, numRuns: 30 },
  );
  expect(moved).toBeGreaterThan(50);
});
