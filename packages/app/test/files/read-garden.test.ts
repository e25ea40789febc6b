import { gardenBytes, gardenEntries } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { readGarden } from '../../src/files/read-garden.ts';
import { newId } from '../../src/garden/new-id.ts';

const fileOf = (plantings: number) =>
  new Blob([
    JSON.stringify({ schema: 'neckfall/garden@1', plantings: Array(plantings).fill({ name: 'x' }) }),
  ]);

test('a garden of the most entries opens, and one more is refused with both numbers', async () => {
  expect(await readGarden(fileOf(gardenEntries.plantings), newId)).toHaveProperty('garden');
  const count = gardenEntries.plantings + 1;
  const refused = { problem: 'too-many', list: 'plantings', count, most: gardenEntries.plantings };
  expect(await readGarden(fileOf(count), newId)).toEqual(refused);
});

test('a file larger than a garden is not read', async () => {
  const large = { size: gardenBytes + 1, arrayBuffer: () => Promise.reject(new Error('was read')) };
  const refused = { problem: 'too-big', bytes: gardenBytes + 1, most: gardenBytes };
  expect(await readGarden(large as unknown as Blob, newId)).toEqual(refused);
});

const levels = 100_000;
const deep = `${'['.repeat(levels)}${']'.repeat(levels)}`;

describe('a file that is nested without end is refused for it', () => {
  test.each([
    ['alone', deep],
    ['in a planting', `{"schema":"neckfall/garden@1","plantings":[{"start":${deep}}]}`],
    ['in a field unknown here', `{"schema":"neckfall/garden@1","notes":${deep}}`],
  ])('%s', async (_, text) => {
    expect(await readGarden(new Blob([text]), newId)).toEqual({ problem: 'too-deep' });
  });
});

test('plantings without ids get such as no other file has', async () => {
  const file = new Blob(['{"schema":"neckfall/garden@1","plantings":[{"name":"a"},{"name":"b"}]}']);
  const read = async () => {
    const found = await readGarden(file, newId);
    return 'garden' in found ? found.garden.plantings.map(({ id }) => id) : [];
  };
  expect(new Set([...(await read()), ...(await read())]).size).toBe(4);
});
