import { describe, expect, it } from 'vitest';
import { defaultPlantValues } from '../../packages/engine/src/index.ts';
import { sapporoResults, sapporoSets } from './set-trial.ts';

// Sapporo 1949–50, Sapporo-ki, planted 25 April (hro.or.jp 1950012). Sets on sale flower less than that kind did: its
// shares are met by sets 2 mm larger. Allowed: 15 points.
describe('cold-stored sets at Sapporo', () => {
  const results = sapporoResults(defaultPlantValues);
  it.each(sapporoSets.map((published, i) => ({ ...published, found: results[i].bolted })))(
    'of $setSizeMm mm bolt within 15 points of $bolted',
    ({ bolted, found }) => expect(Math.abs(found - bolted)).toBeLessThanOrEqual(0.15),
  );
});
