import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fileName } from '../../src/files/file-name.ts';

test('a name keeps letters of any script, and hyphens between', () => {
  expect(fileName(['Pencarreg Bank', '2027-02-20', 'year'], '.svg')).toBe(
    'neckfall-pencarreg-bank-2027-02-20-year.svg',
  );
  expect(fileName(['Ōsaka / 大阪', ''], '.csv')).toBe('neckfall-ōsaka-大阪.csv');
  expect(fileName(['../..'], '.csv')).toBe('neckfall.csv');
});

test('no name leaves its folder, hides or grows too long', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: 'binary', maxLength: 300 }), { maxLength: 4 }), (words) => {
      const name = fileName(words, '.neckfall.json');
      expect(name).toMatch(/^neckfall(-[\p{L}\p{N}-]+)?\.neckfall\.json$/u);
      expect([...name].length).toBeLessThanOrEqual(90);
    }),
    { seed: 20270220, numRuns: 300 },
  );
});
