import { readFileSync } from 'node:fs';
import { gardenSchemaName, restoreGarden } from '@neckfall/engine';
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
  for (const list of [garden.places, garden.cultivars, garden.plantings]) expect(list).toHaveLength(1);
});

test('docs/garden-file.md tells every field of a planting', () => {
  const { plantings } = restoreGarden({
    schema: gardenSchemaName,
    plantings: [{ name: 'something' }],
  }).garden;
  const fields = Object.keys(plantings[0]);
  expect(fields.length).toBeGreaterThan(15);
  for (const field of fields) expect(text).toContain(`\`${field}\``);
});
