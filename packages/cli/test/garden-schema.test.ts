import { readFileSync } from 'node:fs';
import { restoreGarden } from '@neckfall/engine';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const validate = new Ajv({ strict: true, allErrors: true }).compile(
  JSON.parse(readFileSync(new URL('../schemas/garden@1.json', import.meta.url), 'utf8')),
);

const oddValues = fc.oneof(
  fc.jsonValue(),
  fc.constantFrom('long', 14, -200, [2, 5], '2027-03-25', '', 'done', 'put-off', [2024, 1.5]),
);
const entries = (fields: string[]) =>
  fc.array(fc.record(Object.fromEntries(fields.map((field) => [field, oddValues])), { requiredKeys: [] }), {
    maxLength: 4,
  });

test('whatever is read, the garden restored from it is as the published schema says', () => {
  const gardens = fc.record(
    {
      schema: oddValues,
      places: entries(['id', 'name', 'latitudeDeg', 'longitudeDeg', 'elevationM', 'frostHollow', 'hedge']),
      beds: entries([
        'id',
        'name',
        'placeId',
        'lengthM',
        'soil',
        'watering',
        'fertility',
        'afterLegume',
        'feedProduct',
        'alliumYears',
        'whiteRot',
      ]),
      cultivars: entries(['id', 'name', 'class', 'packetHours', 'packetDays', 'keepsMonths', 'colour']),
      plantings: entries([
        'id',
        'name',
        'cultivar',
        'class',
        'start',
        'startDate',
        'placeId',
        'setStore',
        'plants',
        'bedId',
        'plantsPerStation',
      ]),
      jobs: entries(['id', 'plantingId', 'job', 'state', 'date', 'until']),
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

/** An invented garden that says all it can. */
const whole = {
  schema: 'neckfall/garden@1',
  places: [
    {
      id: 'bank',
      name: 'Pencarreg Bank',
      latitudeDeg: 52.08,
      longitudeDeg: -3.13,
      elevationM: 160,
      sunHours: 14,
    },
  ],
  beds: [
    { id: 'long', name: 'The long bed', placeId: 'bank', lengthM: 6, soil: 'clay', alliumYears: [2024] },
  ],
  cultivars: [{ id: 'tin', name: 'Ines’s Tin', class: 'long', packetHours: 15, keepsMonths: [5, 7] }],
  plantings: [{ id: 'a', name: 'The long bed', placeId: 'bank', cultivar: 'Ines’s Tin', start: 'sets' }],
  jobs: [
    { id: 'j', plantingId: 'a', job: 'weed', state: 'put-off', date: '2027-05-20', until: '2027-05-27' },
  ],
};
const restored = () => structuredClone(restoreGarden(whole).garden) as Record<string, unknown>;
const inList = (list: string, change: object) => {
  const garden = restored();
  const [first, ...others] = garden[list] as object[];
  return { ...garden, [list]: [{ ...first, ...change }, ...others] };
};

test('an invented garden passes as it was restored', () => {
  validate(restored());
  expect(validate.errors).toBeNull();
});

test.each([
  ['another schema', { ...restored(), schema: 'neckfall/garden@2' }],
  ['no plantings', { ...restored(), plantings: undefined }],
  ['a place without its point', inList('places', { latitudeDeg: undefined })],
  ['a latitude beyond the poles', inList('places', { latitudeDeg: 91 })],
  ['an onion without a name', inList('cultivars', { name: '' })],
  ['one month of keeping', inList('cultivars', { keepsMonths: [5] })],
  ['a start that is none', inList('plantings', { start: 'cuttings' })],
  ['a date out of order', inList('plantings', { startDate: '28.3.2027' })],
  ['a bed of no width', inList('beds', { widthM: 0 })],
  ['a soil that is none', inList('beds', { soil: 'peat' })],
  ['half a year of onions', inList('beds', { alliumYears: [2024.5] })],
  ['work that is half done', inList('jobs', { state: 'half-done' })],
  ['work put off to no day', inList('jobs', { until: 'tomorrow' })],
  ['a clump of a hundred', inList('plantings', { plantsPerStation: 100 })],
  ['sets the size of a fist', inList('plantings', { setSizeMm: 80 })],
])('a garden with %s does not pass', (_, garden) => {
  // as it would stand in a file
  expect(validate(JSON.parse(JSON.stringify(garden)))).toBe(false);
});
