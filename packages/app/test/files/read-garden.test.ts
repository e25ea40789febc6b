import { gardenBytes, gardenEntries } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { readGarden } from '../../src/files/read-garden.ts';

const fileOf = (plantings: number) =>
  new Blob([
    JSON.stringify({ schema: 'neckfall/garden@1', plantings: Array(plantings).fill({ name: 'x' }) }),
  ]);

test('a garden of the most entries opens, and one more is refused with both numbers', async () => {
  expect(await readGarden(fileOf(gardenEntries))).toHaveProperty('garden');
  const count = gardenEntries + 1;
  const refused = { problem: 'too-many', list: 'plantings', count, most: gardenEntries };
  expect(await readGarden(fileOf(count))).toEqual(refused);
});

test('a file larger than a garden is not read', async () => {
  const large = { size: gardenBytes + 1, arrayBuffer: () => Promise.reject(new Error('was read')) };
  const refused = { problem: 'too-big', bytes: gardenBytes + 1, most: gardenBytes };
  expect(await readGarden(large as unknown as Blob)).toEqual(refused);
});
