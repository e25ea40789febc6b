import { readFileSync } from 'node:fs';
import { restoreGarden } from '@neckfall/engine';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const validate = new Ajv({ strict: true, allErrors: true }).compile(
  JSON.parse(readFileSync(new URL('../schemas/garden@1.json', import.meta.url), 'utf8')),
);

const oddValues = fc.oneof(fc.jsonValue(), fc.constantFrom('long', 14, -200, [2, 5], '2027-03-25', ''));
const entries = (fields: string[]) =>
  fc.array(fc.record(Object.fromEntries(fields.map((field) => [field, oddValues])), { requiredKeys: [] }), {
    maxLength: 4,
  });

test('whatever is read, the garden restored from it is as the published schema says', () => {
  const gardens = fc.record(
    {
      schema: oddValues,
      places: entries(['id', 'name', 'latitudeDeg', 'longitudeDeg', 'elevationM', 'sunHours', 'hedge']),
      cultivars: entries(['id', 'name', 'class', 'packetHours', 'packetDays', 'keepsMonths', 'colour']),
      plantings: entries(['id', 'name', 'cultivar', 'start', 'startDate']),
      stores: oddValues,
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(fc.oneof(gardens, fc.jsonValue()), (found) => {
      validate(restoreGarden(found).garden);
      expect(validate.errors).toBeNull();
    }),
    { seed: 20270503, numRuns: 400 },
  );
});

test('a place without its point does not pass', () => {
  expect(validate({ schema: 'neckfall/garden@1', places: [{ id: 'a', name: 'a' }], cultivars: [] })).toBe(
    false,
  );
});
