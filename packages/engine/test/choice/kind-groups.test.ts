import { expect, test } from 'vitest';
import { type Choice, groupKinds, typicalOf } from '../../src/index.ts';

const sets = (rank: number, traits: object | null) =>
  ({ rank, kind: { type: 'northern-long', start: 'sets', traits } }) as unknown as Choice;

test('of choices as good as the best, the one most like the kind as such stands for the kind', () => {
  const [early, usual] = [sets(1, { dryMatterShare: 0.5 }), sets(1, null)];
  expect(typicalOf(groupKinds([early, usual])[0])).toBe(usual);
  // one that comes after is no measure of the best
  expect(typicalOf(groupKinds([early, sets(4, null)])[0])).toBe(early);
});
