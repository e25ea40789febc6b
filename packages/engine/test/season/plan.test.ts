import { expect, test } from 'vitest';
import type { StartMethod } from '../../src/plant/index.ts';
import { type Plan, planDefaults, plantOutDayOf, startedOn } from '../../src/season/index.ts';

const planOf = (start: StartMethod): Plan => ({ ...planDefaults, type: 'short', start, startDay: 0 });

test('a field of one way of starting can be read where the start is known, and nowhere else', () => {
  const plan = planOf('sets');
  // @ts-expect-error of any plan
  expect(plan.setSizeMm).toBe(16);
  if (plan.start === 'sets') {
    expect(plan.setSizeMm).toBe(16);
    // @ts-expect-error of sets
    expect(plan.lampHours).toBeNull();
  }
  // @ts-expect-error a plan of sets says how large they are
  const bare: Plan<'sets'> = { ...planOf('direct-seed'), start: 'sets' };
  expect(bare.start).toBe('sets');
});

test('a day of planting out is heeded by raised seedlings alone', () => {
  const outOf = (start: StartMethod) => plantOutDayOf(startedOn(planOf(start), 10, 60));
  expect(outOf('raised-seedlings')).toBe(60);
  expect(outOf('sets')).toBeNull();
  expect(plantOutDayOf(startedOn(planOf('raised-seedlings'), 10))).toBeNull();
});
