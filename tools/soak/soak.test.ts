import { describe, expect, test } from 'vitest';
import { attacks } from './attacks.ts';

/** Cases of all classes together in a test run; `npm run soak` tries a million. */
const cases = 20_000;
const seed = 20_270_503;

test('the shares of the classes come to a hundred', () => {
  expect(attacks.reduce((sum, { share }) => sum + share, 0)).toBe(100);
});

describe(`${cases} hostile inputs end as they should`, () => {
  test.each(attacks.map((attack) => [attack.name, attack] as const))('%s', async (_, { share, run }) => {
    const tries = await run(seed, (cases * share) / 100);
    expect(tries.failures).toEqual([]);
  });
});
