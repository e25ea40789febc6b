import { dayNumber, emptyGarden, restoreGarden } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { markOf, marksOf, withMark, withoutMark } from '../../src/garden/job-marks.ts';

const day = dayNumber(2027, 5, 20);
const told = (marks: ReturnType<typeof marksOf>) => marks.map(({ job, state }) => `${job} ${state}`);

const garden = [
  markOf('weed', 'put-off', day, day + 7),
  markOf('feed', 'done', day),
  markOf('weed', 'done', day + 7),
].reduce(
  (now, mark) => withMark(now, 'bed', mark),
  withMark(emptyGarden(), 'other', markOf('weed', 'left-out', day)),
);

describe('what became of the work on a planting', () => {
  test('is said once of a piece of work, last what was said last', () => {
    expect(told(marksOf(garden, 'bed'))).toEqual(['feed done', 'weed done']);
    expect(told(marksOf(garden, 'other'))).toEqual(['weed left-out']);
    expect(marksOf(garden, 'bed')[1]).toMatchObject({ date: '2027-05-27', plantingId: 'bed' });
    expect(marksOf(garden, 'bed')[1]).not.toHaveProperty('until');
  });

  test('is unsaid of one piece of work, and all else stays', () => {
    const open = withoutMark(garden, 'bed', 'weed');
    expect(told(marksOf(open, 'bed'))).toEqual(['feed done']);
    expect(marksOf(open, 'other')).toHaveLength(1);
  });

  test('is kept as the garden file has it', () => {
    const put = withMark(emptyGarden(), 'bed', markOf('lift', 'put-off', day, day + 7));
    expect(put.jobs[0]).toMatchObject({ state: 'put-off', date: '2027-05-20', until: '2027-05-27' });
    for (const one of [garden, put]) expect(restoreGarden(one)).toEqual({ garden: one, changes: [] });
  });
});
