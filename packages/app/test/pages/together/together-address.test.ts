import { dayNumber } from '@neckfall/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  mostLines,
  readOn,
  readPlaces,
  readStarts,
  writePlaces,
  writeStarts,
} from '../../../src/pages/together/together-address.ts';

test('places and starts are read as they are written', () => {
  const raw = '45.76,4.84~Lyon;59.91,10.75;-33.926,18.423~Cape Town';
  const { entries, unread, beyond } = readPlaces(raw);
  expect([unread, beyond]).toEqual([[], []]);
  expect(entries.map(({ name }) => name)).toEqual(['Lyon', null, 'Cape Town']);
  expect(writePlaces(entries)).toBe(raw);
  const starts = 'sets~2027-03-25;direct-seed~2026-08-20';
  expect(readStarts(starts).entries).toEqual([
    { start: 'sets', startDay: dayNumber(2027, 3, 25) },
    { start: 'direct-seed', startDay: dayNumber(2026, 8, 20) },
  ]);
  expect(writeStarts(readStarts(starts).entries)).toBe(starts);
});

test('what is damaged is named and left out, the rest stays', () => {
  const { entries, unread } = readPlaces('45.76,4.84~Lyon;north of here;95,4~Nowhere;1,2~a~b;');
  expect(entries).toHaveLength(1);
  expect(unread).toEqual(['north of here', '95,4~Nowhere', '1,2~a~b']);
  expect(readStarts('sets~2027-13-01;bulbs~2027-03-01;sets').unread).toHaveLength(3);
  expect(readOn('2027-06-21')).toBe(dayNumber(2027, 6, 21));
  expect([readOn('midsummer'), readOn(null)]).toEqual([null, null]);
});

test('no link gives more than six, and names those beyond', () => {
  const raw = Array.from({ length: 9 }, (_, i) => `${40 + i},4~Town ${i}`).join(';');
  const { entries, beyond } = readPlaces(raw);
  expect(entries).toHaveLength(mostLines);
  expect(beyond).toEqual(['46,4~Town 6', '47,4~Town 7', '48,4~Town 8']);
});

test('any text is read without harm, and names can part no places', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 300 }), (raw) => {
      expect(readPlaces(raw).entries.length).toBeLessThanOrEqual(mostLines);
      expect(readStarts(raw).entries.length).toBeLessThanOrEqual(mostLines);
      const written = writePlaces([{ latitudeDeg: 1, longitudeDeg: 2, name: raw.slice(0, 50) }]);
      expect(written.split(';')).toHaveLength(1);
    }),
    { seed: 3 },
  );
});
