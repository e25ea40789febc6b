import { expect, test } from 'vitest';
import { causeKinds } from '../../packages/engine/src/index.ts';
import { bandsOf, foundOf, isFirst, shareOf } from './figures.ts';
import { studyPlaces } from './places.ts';
import { studyOf } from './study.ts';

// docs/why.md has more seasons, and causes that no run knows
const asked = studyPlaces().flatMap((place, at) =>
  studyOf(place, 500 + at, 1, (cause) => causeKinds[cause] === 'run'),
);

test('causes put into sound crops are found first, or among the first three', () => {
  expect(foundOf(asked).length).toBeGreaterThanOrEqual(12);
  expect(shareOf(asked, ({ last, cause }) => isFirst(last, [cause]))).toBeGreaterThanOrEqual(0.85);
  const ofThree = shareOf(asked, ({ last, cause }) =>
    last.causes.slice(0, 3).some((of) => of.cause === cause),
  );
  expect(ofThree).toBeGreaterThanOrEqual(0.95);
});

test('what is given small probabilities is seldom the cause', () => {
  const [least] = bandsOf(asked);
  expect(least.given).toBeGreaterThan(0);
  expect(least.right).toBeLessThan(0.2);
});
