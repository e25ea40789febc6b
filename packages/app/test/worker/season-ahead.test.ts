import { dayNumber, groundUnsaid, type Observation } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { seasonAhead } from '../../src/worker/season-ahead.ts';
import { temperate } from './a-site.ts';

const plan = { start: 'sets', startDay: dayNumber(2026, 3, 20) } as const;
const crop = { class: 'long' } as const;
const lastYear = (seen: readonly Observation[]) => ({ crop, plan, seen });
const ahead = (seen: readonly Observation[]) =>
  seasonAhead({
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
  });
const noted = { id: 'a', plantingId: 'p', date: '2026-08-20', lookedAt: 20 };

test('an earlier season is told of only where something that tells was seen of it', () => {
  expect(ahead([{ ...noted, topsOverShare: 0.5 }]).learnt).toMatchObject({ hasEarlier: true });
  expect(ahead([]).learnt).toBeNull();
  expect(ahead([{ ...noted, note: 'Weeded' }]).learnt).toBeNull();
});
