import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { jobNames } from '../../src/jobs/job.ts';
import { jobTable } from '../../src/jobs/job-table.ts';

test('docs/work.md tells all work with its source, in its order', () => {
  const page = readFileSync(new URL('../../../../docs/work.md', import.meta.url), 'utf8');
  const rows = [...page.matchAll(/^\| ([a-z][a-z-]*) \| ([a-z0-9-]+) \|$/gm)].map(([, name, source]) => [
    name,
    source,
  ]);
  expect(rows.filter(([name]) => name !== 'work')).toEqual(
    jobNames.map((name) => [name, jobTable[name].source]),
  );
});
