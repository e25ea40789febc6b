import { dayNumber } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { whichOnion } from '../../src/worker/which-onion.ts';
import { windySouth } from './a-site.ts';

const packet = { class: null, hours: null, days: null };
const onion = { name: 'your onion', starts: ['sets' as const], packet, keepsMonths: null };

test.each([
  [2027, 2, 10],
  [2027, 5, 3],
  [2027, 8, 20],
])('sets of which nothing is said are one onion in all that is told of them: %i-%i-%i', (...date) => {
  const { choices, grown, now, read } = whichOnion({
    site: windySouth,
    onion,
    firstDay: dayNumber(...date),
    options: {},
  });
  const { summary } = now!;
  expect(choices).toHaveLength(1);
  expect(choices[0].kind.type).toBe(summary.plan.type);
  expect(choices[0].summary).toBe(summary);
  expect(grown[0].kind).toEqual(choices[0].kind);
  expect(read!.type).toBe(summary.plan.type);
});
