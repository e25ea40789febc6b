import { parseDay, restoreGarden } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { byPlace } from '../../src/garden/by-place.ts';
import { seenByPlanting, weatherByPlace } from '../../src/garden/kept-of.ts';

const { garden } = restoreGarden({
  schema: 'neckfall/garden@1',
  places: ['bank', 'roof', 'yard'].map((id) => ({ id, name: id, latitudeDeg: 52, longitudeDeg: -3 })),
  plantings: [{ id: 'a', name: 'The long bed', placeId: 'bank' }],
  observations: [
    { id: '1', plantingId: 'a', date: '2027-06-01', leavesGreen: 6 },
    { id: '2', plantingId: 'a', date: '2027-05-01', leavesGreen: 3 },
    { id: '3', plantingId: null, date: '2027-07-01' },
  ],
  weather: [
    { id: 'w', placeId: 'bank', firstDate: '2027-05-01', tempMinC: [1, null, 3, 4], rainMm: [null, 0.2] },
    { id: 'v', placeId: 'roof', firstDate: '2027-05-01', tempMinC: [1, 2, 3], forecastFrom: '2027-05-03' },
    { id: 'u', placeId: 'yard', firstDate: '2027-05-01', tempMinC: [1], forecastFrom: '2027-05-01' },
  ],
});
const day = (date: string) => parseDay(date);

test('plantings tell how often they were looked at and when last', () => {
  expect([...seenByPlanting(garden.observations)]).toEqual([['a', { count: 2, lastDay: day('2027-06-01') }]]);
});

test('places tell the days that came, of them those measured, and leave out what was forecast', () => {
  expect([...weatherByPlace(garden.weather)]).toEqual([
    ['bank', { fromDay: day('2027-05-01'), toDay: day('2027-05-04'), measuredDays: 4 }],
    ['roof', { fromDay: day('2027-05-01'), toDay: day('2027-05-02'), measuredDays: 2 }],
  ]);
});

test('a place with weather alone is shown too', () => {
  expect(byPlace(garden).placed.map(({ place }) => place.id)).toEqual(['bank', 'roof', 'yard']);
  expect(byPlace({ ...garden, weather: [] }).placed.map(({ place }) => place.id)).toEqual(['bank']);
});
