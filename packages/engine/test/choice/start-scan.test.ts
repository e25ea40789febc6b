import { expect, test } from 'vitest';
import { isNearGood, type MeanTrial } from '../../src/choice/start-scan.ts';

test('a fortnight is worth a look where it or one beside it is good, over the end of the year too', () => {
  const trials = ['good', 'small', 'small', 'bolts', 'small'].map((verdict) => ({ verdict }) as MeanTrial);
  expect(trials.map((_, at) => isNearGood(trials, at))).toEqual([true, true, false, false, true]);
});
