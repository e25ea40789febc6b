import { describe, expect, test } from 'vitest';
// @ts-expect-error plain JavaScript: it runs before anything is installed
import { countTests } from '../tools/setup/count-tests.mjs';

const file = (status: string, ...tests: [name: string, status: string][]) => ({
  name: 'some.test.ts',
  status,
  assertionResults: tests.map(([fullName, testStatus]) => ({ fullName, status: testStatus })),
});

describe('the last line of npm test', () => {
  test('counts passed and failed, and names failed and skipped', () => {
    const report = {
      testResults: [file('failed', ['a', 'passed'], ['b', 'failed'], ['c', 'skipped'], ['d', 'todo'])],
    };
    const { passed, failed, skipped } = countTests(report, 1);
    expect({ passed, failed: failed.length, skipped: skipped.length }).toEqual({
      passed: 1,
      failed: 1,
      skipped: 2,
    });
    expect(failed[0]).toMatch(/some\.test\.ts: b$/);
  });

  test('counts a file that failed before its first test', () => {
    expect(countTests({ testResults: [file('failed')] }, 1).failed).toHaveLength(1);
  });

  test('counts an error outside the tests, and a run without a report', () => {
    expect(countTests({ testResults: [file('passed', ['a', 'passed'])] }, 1).failed).toHaveLength(1);
    expect(countTests(null, 0)).toMatchObject({ passed: 0, failed: [expect.any(String)] });
  });

  test('is clean when all is', () => {
    expect(countTests({ testResults: [file('passed', ['a', 'passed'])] }, 0)).toEqual({
      passed: 1,
      failed: [],
      skipped: [],
    });
  });
});
