import { expect, test } from 'vitest';
import { meanOf } from './page.ts';
import { kitchens } from './places.ts';
import { livedKitchen } from './study.ts';

test.each(kitchens().map((kitchen) => [kitchen.name, kitchen] as const))(
  '%s is fed in eight of ten years it was not planned with',
  (_, kitchen) => {
    const { plan, lived } = livedKitchen(kitchen);
    expect(plan.lots.length).toBeGreaterThan(0);
    expect(meanOf(lived, 'years')).toBeGreaterThanOrEqual(100);
    expect(meanOf(lived, 'suppliedShare')).toBeGreaterThanOrEqual(0.8);
  },
);
