import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isNestedTooDeep, mostLevels } from '../../src/garden/index.ts';

const lists = (levels: number) => '['.repeat(levels) + ']'.repeat(levels);
const records = (levels: number) => `${'{"a":'.repeat(levels)}0${'}'.repeat(levels)}`;

test('lists and records may lie so deep in each other, and no deeper', () => {
  for (const nested of [lists, records]) {
    expect(isNestedTooDeep(nested(mostLevels))).toBe(false);
    expect(isNestedTooDeep(nested(mostLevels + 1))).toBe(true);
    expect(isNestedTooDeep(`{"b":[${nested(mostLevels - 1)}]}`)).toBe(true);
  }
  expect(
    isNestedTooDeep(
      `[${Array(1000)
        .fill(lists(mostLevels - 1))
        .join(',')}]`,
    ),
  ).toBe(false);
});

test('what stands in words is no nesting', () => {
  expect(
    isNestedTooDeep(JSON.stringify({ note: `"\\"${'['.repeat(100)}\\`, [`{"${'{'.repeat(100)}`]: 1 })),
  ).toBe(false);
  expect(isNestedTooDeep(`["\\"","${'['.repeat(100)}"]`)).toBe(false);
  expect(isNestedTooDeep(`["\\\\",${'['.repeat(100)}`)).toBe(true);
});

test('what is no JSON is looked at to its end', () => {
  for (const text of ['', '"', '"\\', ']]]]', '{"a', 'null']) expect(isNestedTooDeep(text)).toBe(false);
  expect(isNestedTooDeep('['.repeat(1_000_000))).toBe(true);
});

test('as one would count by walking through what was read', () => {
  const depthOf = (value: unknown): number =>
    typeof value === 'object' && value !== null
      ? 1 + Math.max(0, ...Object.values(value).map((within) => depthOf(within)))
      : 0;
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 5 }), fc.integer({ min: 58, max: 66 }), (value, levels) => {
      const text = `${'['.repeat(levels)}${JSON.stringify(value)}${']'.repeat(levels)}`;
      expect(isNestedTooDeep(text)).toBe(levels + depthOf(value) > mostLevels);
    }),
    { seed: 20270520, numRuns: 300 },
  );
});
