import { emptyGarden, type Observation } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import {
  lastLookedAt,
  seenOf,
  toLearnFrom,
  withoutSeen,
  withSeen,
  withSeenChanged,
} from '../../src/garden/seen.ts';

const on = (id: string, date: string, more: Partial<Observation> = {}): Observation => ({
  id,
  plantingId: null,
  date,
  ...more,
});

const garden = [on('a', '2027-05-01'), on('b', '2027-05-20'), on('c', '2027-05-01')].reduce(
  (now, entry) => withSeen(now, 'bed', entry),
  withSeen(null, 'other', on('d', '2027-05-10')),
);

describe('what was seen of a planting', () => {
  test('comes the newest first, and of one day the last noted first', () => {
    expect(seenOf(garden, 'bed').map(({ id }) => id)).toEqual(['b', 'c', 'a']);
    expect(seenOf(emptyGarden(), 'bed')).toEqual([]);
  });

  test('is learnt from in the order in which it was, up to the day it is', () => {
    const seen = seenOf(garden, 'bed');
    // 19 and 20 May 2027
    expect(toLearnFrom(seen, 20_957).map(({ id }) => id)).toEqual(['a', 'c']);
    expect(toLearnFrom(seen, 20_958).map(({ id }) => id)).toEqual(['a', 'c', 'b']);
  });

  test('is changed in its place and removed, and all else stays', () => {
    const changed = withSeenChanged(garden, on('b', '2027-05-21', { plantingId: 'bed', leavesGreen: 4 }));
    expect(changed.observations.map(({ id, date }) => `${id} ${date}`)).toEqual([
      'd 2027-05-10',
      'a 2027-05-01',
      'b 2027-05-21',
      'c 2027-05-01',
    ]);
    // gone meanwhile
    expect(withSeenChanged(garden, on('x', '2027-05-21'))).toEqual(garden);
    expect(withoutSeen(garden, 'a').observations.map(({ id }) => id)).toEqual(['d', 'b', 'c']);
  });

  test('asks for as many plants as last time, tops of ten apart', () => {
    expect(lastLookedAt([])).toBe(5);
    const tops = on('t', '2027-08-20', { lookedAt: 10, topsOverShare: 0.4 });
    expect(lastLookedAt([tops, on('b', '2027-05-20', { lookedAt: 8 })])).toBe(8);
  });
});
