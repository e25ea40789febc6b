import { dayNumber, emptyGarden, groundUnsaid, type Observation, restoreGarden } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { seasonAhead } from '../../src/worker/season-ahead.ts';
import { storedNow } from '../../src/worker/stored-now.ts';
import { temperate } from './a-site.ts';

const lifted: Observation = { id: 'a', plantingId: 'p', date: '2027-08-12', lifted: true, bulbCount: 90 };
const { garden } = restoreGarden({
  ...emptyGarden(),
  places: [{ id: 'here', name: 'Tarn Bank', latitudeDeg: 48, longitudeDeg: 4 }],
  plantings: [{ id: 'p', name: 'Bram’s sets', placeId: 'here', class: 'long' }],
  observations: [lifted],
});
const today = dayNumber(2027, 9, 20);

test('the page of the store and the work on the crop name the same look', () => {
  const [{ stored }] = storedNow({ site: temperate, store: 'shed', garden, places: ['here'], today });
  const { jobs } = seasonAhead({
    site: temperate,
    crop: { class: 'long' },
    starts: ['sets'],
    start: 'sets',
    startDay: dayNumber(2027, 3, 20),
    today,
    options: {},
    seen: [lifted],
    ground: groundUnsaid,
    marks: [],
    keepsMonths: [5, 7],
    store: 'shed',
  });
  const looks = jobs.filter(({ name }) => name === 'check-store').map(({ best }) => best);
  expect(stored.nextLook).toBeGreaterThan(today);
  expect(looks).toContain(stored.nextLook);
});
