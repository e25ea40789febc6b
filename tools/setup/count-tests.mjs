import { relative } from 'node:path';
import { root } from './steps.mjs';

/**
 * Counts a vitest JSON report. A file that failed before its first test counts as one failure, and so do a run
 * that left no report and one that failed although every test passed (an error outside the tests).
 */
export function countTests(report, exitCode) {
  if (!report) return { passed: 0, failed: ['vitest left no report'], skipped: [] };
  let passed = 0;
  const failed = [];
  const skipped = [];
  for (const file of report.testResults) {
    const fileName = relative(root, file.name);
    for (const test of file.assertionResults) {
      const name = `${fileName}: ${test.fullName}`;
      if (test.status === 'passed') passed++;
      else if (test.status === 'failed') failed.push(name);
      else skipped.push(name);
    }
    if (file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed')) {
      failed.push(fileName);
    }
  }
  if (exitCode !== 0 && failed.length === 0) failed.push('vitest: an error outside the tests');
  return { passed, failed, skipped };
}
