import { cultivars } from '@neckfall/data';
import { expect, test } from 'vitest';
import { kitchenKindsOf } from '../../src/facts/kitchen-kinds.ts';

test('kinds for a kitchen answer wants by what the catalogue says, and each name is sold so', () => {
  const kinds = kitchenKindsOf(cultivars, 'GB');
  expect(kinds.length).toBeGreaterThan(0);
  for (const { names, start, type, likes, traits } of kinds) {
    expect(traits).toBeNull();
    for (const name of names) {
      const cultivar = cultivars.find((one) => one.name === name);
      expect(cultivar?.type).toBe(type);
      expect(cultivar?.starts).toContain(start);
      expect(likes.includes('red')).toBe(cultivar?.colour === 'red');
    }
  }
});
