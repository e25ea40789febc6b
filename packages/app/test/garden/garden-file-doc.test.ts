import { readFileSync } from 'node:fs';
import {
  gardenEntries,
  gardenSchemaName,
  observedNumbers,
  recordFields,
  restoreGarden,
} from '@neckfall/engine';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';

const text = readFileSync(new URL('../../../../docs/garden-file.md', import.meta.url), 'utf8');

test('the example of docs/garden-file.md is a garden without fault', () => {
  const [, example] = /```json\n([\s\S]*?)```/.exec(text) ?? [];
  const { garden, changes } = restoreGarden(JSON.parse(example));
  expect(changes).toEqual([]);
  expect(garden.schema).toBe(gardenSchemaName);
  const validate = new Ajv({ strict: true }).compile(
    JSON.parse(readFileSync(new URL('../../../cli/schemas/garden@1.json', import.meta.url), 'utf8')),
  );
  validate(garden);
  expect(validate.errors).toBeNull();
  expect(validate(JSON.parse(example.replace('"long"', '"lang"')))).toBe(false);
  for (const list of ['places', 'beds', 'cultivars', 'plantings', 'observations', 'jobs'] as const)
    expect(garden[list]).toHaveLength(1);
});

test('docs/garden-file.md tells every field of an observation and of weather, and how many there may be', () => {
  for (const field of [...observedNumbers, ...recordFields]) expect(text).toContain(`\`${field}\``);
  for (const most of Object.values(gardenEntries)) expect(text).toContain(most.toLocaleString('en'));
});

test('docs/garden-file.md tells every field of a planting, of a bed and of a mark of work', () => {
  const bare = [{ name: 'something' }];
  const job = { job: 'weed', state: 'put-off', date: '2027-05-20', until: '2027-05-27' };
  const { plantings, beds, jobs } = restoreGarden({
    schema: gardenSchemaName,
    plantings: bare,
    beds: bare,
    jobs: [job],
  }).garden;
  const fields = [...Object.keys(plantings[0]), ...Object.keys(beds[0]), ...Object.keys(jobs[0])];
  expect(fields.length).toBeGreaterThan(45);
  for (const field of fields) expect(text).toContain(`\`${field}\``);
});
