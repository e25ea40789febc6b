import { dayNumber, groundUnsaid, type Observation } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { type SeasonAheadAsked, seasonAhead } from '../../src/worker/season-ahead.ts';
import { temperate } from './a-site.ts';

const plan = { start: 'sets', startDay: dayNumber(2026, 3, 20) } as const;
const crop = { class: 'long' } as const;
const lastYear = (seen: readonly Observation[]) => ({ crop, plan, seen });
const asked = (seen: readonly Observation[]): SeasonAheadAsked => ({
  site: { ...temperate, earlier: [lastYear(seen)] },
  crop,
  starts: ['sets'],
  start: 'sets',
  startDay: dayNumber(2027, 3, 20),
  today: dayNumber(2027, 3, 1),
  options: {},
  seen: [],
  ground: groundUnsaid,
  marks: [],
  keepsMonths: [5, 7],
  store: 'cellar',
});
const ahead = (seen: readonly Observation[]) => seasonAhead(asked(seen));
const noted = { id: 'a', plantingId: 'p', date: '2026-08-20', lookedAt: 20 };

test('an earlier season is told of only where something that tells was seen of it', () => {
  expect(ahead([{ ...noted, topsOverShare: 0.5 }]).learnt).toMatchObject({ hasEarlier: true });
  expect(ahead([]).learnt).toBeNull();
  expect(ahead([{ ...noted, note: 'Weeded' }]).learnt).toBeNull();
});

test('what became of its work changes its jobs alone, and is not mixed up with another crop', () => {
  const day = dayNumber(2027, 3, 20);
  const on = (marks: SeasonAheadAsked['marks'], today = day) => seasonAhead({ ...asked([]), today, marks });
  const state = (reply: ReturnType<typeof on>) => reply.jobs.find(({ id }) => id === 'plant')?.state;
  const open = on([]);
  const done = on([{ id: 'm', plantingId: 'p', job: 'plant', state: 'done', date: '2027-03-20' }]);
  expect([state(open), state(done), state(on([]))]).toEqual(['now', 'done', 'now']);
  expect(done.summary).toBe(open.summary);
  expect(state(on([], day + 60))).toBe('gone-by');
  expect(seasonAhead({ ...asked([]), today: day, marks: [] })).toEqual(open);
});
