import { restoreGarden } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { nothingAsked } from '../../src/address/address.ts';
import { saidFields } from '../../src/garden/said-of.ts';

describe('what a grower said of a plan', () => {
  test('is what stands in the address, and nothing of what is usual', () => {
    expect(saidFields(nothingAsked, null, null)).toEqual([]);
    const asked = {
      ...nothingAsked,
      cultivar: 'Ailsa',
      start: 'sets',
      setSize: 20,
      rowDistance: 30,
    } as const;
    expect(saidFields(asked, null, null)).toEqual(['type', 'traits', 'start', 'densityPerM2', 'setSizeMm']);
  });

  test('is what a planting or its bed says too, the usual as well', () => {
    const { garden } = restoreGarden({
      schema: 'neckfall/garden@1',
      beds: [{ id: 'b', name: 'Bed', placeId: null, water: 'watered' }],
      plantings: [
        { id: 'p', name: 'P', bedId: 'b', setStore: 'cold' },
        { id: 'q', name: 'Q' },
      ],
    });
    const [p, q] = garden.plantings;
    expect(saidFields(nothingAsked, garden, p)).toEqual(['setStore', 'water']);
    expect(saidFields(nothingAsked, garden, q)).toEqual([]);
  });
});
