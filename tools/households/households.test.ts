import { expect, test } from 'vitest';
import { meanOf } from './page.ts';
import { type Kitchen, kitchens } from './places.ts';
import { livedKitchen } from './study.ts';

/** Fed in fewer of the years lived than is asked for: docs/households.md. Once it is fed, its test fails and this goes. */
const notFed = ['Harrowgill'];

function expectFed(kitchen: Kitchen): void {
  const { plan, lived } = livedKitchen(kitchen);
  expect(plan.lots.length).toBeGreaterThan(0);
  expect(meanOf(lived, 'years')).toBeGreaterThanOrEqual(100);
  expect(meanOf(lived, 'suppliedShare')).toBeGreaterThanOrEqual(0.8);
}

for (const kitchen of kitchens()) {
  const isKnownShort = notFed.includes(kitchen.name);
  (isKnownShort ? test.fails : test)(
    `${kitchen.name} is fed in eight of ten years it was not planned with`,
    () => expectFed(kitchen),
  );
}
