// npm test: lint, types, pages of the API, what nothing uses, and every test; the last line counts them.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findChromium } from './chromium.mjs';
import { countTests } from './count-tests.mjs';
import { build, installIfNeeded, packageProgram, requireNode, show } from './steps.mjs';

requireNode();
installIfNeeded();

const chromium = findChromium();
if (!chromium) {
  process.stderr.write(
    'No Chromium: the browser tests are skipped. Install it (Debian: apt-get install chromium) or name one in CHROMIUM_PATH.\n',
  );
}
const { CHROMIUM_PATH: _, ...rest } = process.env;
const env = chromium ? { ...rest, CHROMIUM_PATH: chromium } : rest;

const node = process.execPath;
const steps = [
  ['lint', () => show(node, [packageProgram('@biomejs', 'biome', 'bin', 'biome'), 'check', '.'])],
  ['types', () => types()],
  ['types of the app', () => types('--project', join('packages', 'app'))],
  [
    'pages of the API',
    () => show(node, [packageProgram('typedoc', 'bin', 'typedoc'), '--emit', 'none', '--logLevel', 'Warn']),
  ],
  ['nothing unused', () => show(node, [packageProgram('knip', 'bin', 'knip.js')])],
];
const failedSteps = steps.filter(([, run]) => run() !== 0).map(([name]) => name);

await build();
const folder = mkdtempSync(join(tmpdir(), 'neckfall-test-'));
const report = join(folder, 'report.json');
const exitCode = show(
  node,
  [
    packageProgram('vitest', 'vitest.mjs'),
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...process.argv.slice(2),
  ],
  env,
);
const tests = countTests(readReport(report), exitCode);
rmSync(folder, { recursive: true, force: true });

for (const name of tests.skipped) process.stdout.write(`skipped: ${name}\n`);
for (const name of failedSteps) process.stdout.write(`failed: ${name}\n`);
for (const name of tests.failed) process.stdout.write(`failed: ${name}\n`);
const passed = tests.passed + steps.length - failedSteps.length;
const failed = tests.failed.length + failedSteps.length;
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;

function types(...args) {
  return show(node, [packageProgram('typescript', 'bin', 'tsc'), '--noEmit', ...args]);
}

function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return null;
  }
}
