import { expect, test } from 'vitest';
import { meanOf } from './page.ts';
import { kitchens } from './places.ts';
import { livedKitchen } from './study.ts';

test.each(kitchens())('$name is fed in eight years of ten that were not planned with', (kitchen) => {
  const { plan, lived } = livedKitchen(kitchen);
  expect(plan.lots.length).toBeGreaterThan(0);
  expect(meanOf(lived, 'years')).toBeGreaterThanOrEqual(100);
  expect(meanOf(lived, 'suppliedShare')).toBeGreaterThanOrEqual(0.8);
  const gapDays = plan.gaps.reduce((sum, { from, to }) => sum + to - from + 1, 0);
  expect(gapDays).toBeLessThan(300);
});
