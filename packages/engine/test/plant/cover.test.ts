import { expect, test } from 'vitest';
import { covers, coverUse } from '../../src/plant/index.ts';

test('fleece adds to the minimum what trials saw, 0.5 to 1.8 °C (Oregon 1983–84), a tunnel 1.3 and 4.2 (Savage 1980)', () => {
  expect(covers.fleece.minC).toBeGreaterThanOrEqual(0.5);
  expect(covers.fleece.minC).toBeLessThanOrEqual(1.8);
  expect(covers.tunnel).toMatchObject({ minC: 1.3, maxC: 4.2 });
});

test('covers take some light, 15 and 20 % (memory), and none takes none', () => {
  expect(covers.none).toEqual({ minC: 0, maxC: 0, light: 1 });
  expect([covers.fleece.light, covers.tunnel.light]).toEqual([0.85, 0.8]);
});

test('a cover lies for six weeks, and on nights of frost', () => {
  expect(coverUse).toEqual({ days: 42, frostBelowC: 0 });
});
