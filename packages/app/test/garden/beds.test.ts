import { emptyGarden, type Garden, gardenRanges, restoreGarden } from '@neckfall/engine';
import { describe, expect, test } from 'vitest';
import { nothingAsked } from '../../src/address/address.ts';
import {
  nothingSaid,
  readYears,
  withBed,
  withBedChanged,
  withBedHere,
  withoutBed,
} from '../../src/garden/beds.ts';

const asked = { ...nothingAsked, at: { latitudeDeg: 52.08, longitudeDeg: -3.13 } };
const said = { ...nothingSaid, name: 'The long bed', soil: 'clay' as const };
const isWhole = (garden: Garden) => expect(restoreGarden(garden)).toEqual({ garden, changes: [] });

test('a bed is made at the place of an address, which comes along where the garden has it not', () => {
  const first = withBedHere(null, said, asked, 'Pencarreg Bank');
  expect(first.places).toMatchObject([{ name: 'Pencarreg Bank' }]);
  expect(first.beds).toMatchObject([{ ...said, placeId: first.places[0].id }]);
  const second = withBedHere(first, said, asked, 'Elsewhere');
  expect(second.places).toEqual(first.places);
  expect(new Set(second.beds.map(({ id }) => id)).size).toBe(2);
  isWhole(second);
});

test('a form of which nothing was said makes a bed as restoring would', () => {
  const garden = withBed(emptyGarden(), { ...nothingSaid, name: 'A' }, 'bank');
  isWhole(garden);
  const { garden: restored } = restoreGarden({ ...garden, beds: [{ id: 'a', name: 'A' }] });
  expect({ ...restored.beds[0], id: '', placeId: '' }).toEqual({ ...garden.beds[0], id: '', placeId: '' });
});

test('a bed that is changed keeps what this version does not know', () => {
  const garden = withBed(emptyGarden(), said, 'bank');
  const [bed] = garden.beds;
  const edged = { ...garden, beds: [{ ...bed, edgedBy: 'Ines Tarrant' }] };
  const changed = withBedChanged(edged, bed.id, { ...said, name: 'The short bed', soil: null });
  expect(changed.beds).toEqual([{ ...bed, edgedBy: 'Ines Tarrant', name: 'The short bed', soil: null }]);
  expect(withBedChanged(edged, 'gone', said)).toEqual(edged);
});

test('what lay in a bed that is removed lies in none, in the same soil', () => {
  const { garden } = restoreGarden({
    ...emptyGarden(),
    beds: [{ id: 'long', name: 'Long', soil: 'clay', water: 'rain', cover: 'fleece' }],
    plantings: [
      { id: 'a', name: 'A', bedId: 'long', cover: 'none' },
      { id: 'b', name: 'B', bedId: null },
    ],
  });
  const [a, b] = withoutBed(garden, 'long').plantings;
  expect(a).toEqual({ ...garden.plantings[0], bedId: null, soil: 'clay', water: 'rain', cover: 'none' });
  expect(b).toBe(garden.plantings[1]);
  expect(withoutBed(garden, 'long').beds).toEqual([]);
});

describe('years in a form', () => {
  test.each([
    ['', []],
    ['2024', [2024]],
    ['2024, 2021', [2021, 2024]],
    [' 2021;2024 2021. ', [2021, 2024]],
    ['24', null],
    ['last year', null],
    ['2024-2026', null],
    ['20244', null],
  ])('%j', (text, years) => {
    expect(readYears(text, gardenRanges.allium)).toEqual(years);
  });
});
