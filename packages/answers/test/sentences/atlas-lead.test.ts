import {
  type AtlasEntry,
  classOfType,
  dayNumber,
  gridPoints,
  type OnionType,
  type Region,
} from '@neckfall/engine';
import { loadLater, speaker } from '@neckfall/words';
import { describe, expect, test } from 'vitest';
import {
  type AtlasPoint,
  atlasBands,
  atlasBorders,
  atlasLead,
  atlasRows,
  regionAbout,
} from '../../src/index.ts';

await loadLater();
const british = speaker('metric');

function entry(type: OnionType, more: Partial<AtlasEntry> = {}): AtlasEntry {
  return {
    class: classOfType[type],
    type,
    start: 'sets',
    isAtHome: true,
    startDay: dayNumber(2027, 4, 5),
    goodShare: 1,
    outcome: 'good',
    gamble: false,
    neckFallDay: dayNumber(2027, 8, 10),
    bulbDiameterMm: 70,
    worth: 1,
    ...more,
  };
}

const both: Region = { southDeg: -60, westDeg: 0, northDeg: 70, eastDeg: 30 };
/** Long-day beyond 40°, short-day up to 30°, intermediate-day between, on either half; the south a half year later. */
const parted: AtlasPoint[] = [...gridPoints(both, 2)].map((point) => {
  const away = Math.abs(point.latitudeDeg);
  const type = away >= 40 ? 'northern-long' : away < 30 ? 'short' : 'intermediate';
  const month = point.latitudeDeg < 0 ? 9 : 3;
  return { ...point, entry: entry(type, { startDay: dayNumber(2027, month, 10) }) };
});

describe('what stands out on a map', () => {
  test('are the latitudes at which kinds change places, on either half of the Earth', () => {
    const [north, south] = atlasLead(parted, { shows: 'kind', class: null }, british);
    expect(north).toContain('Long-day onions do best north of about 40° N');
    expect(north).toContain('short-day ones up to about 30° N');
    expect(south).toContain('Long-day onions do best south of about 40° S');
    expect(south).toContain('short-day ones down to about 30° S');
  });

  test('is one kind where it leads nearly everywhere, and no line where kinds lie mixed', () => {
    const one = parted.map((point) => ({ ...point, entry: entry('early-long') }));
    expect(atlasLead(one, { shows: 'kind', class: null }, british)).toEqual([
      'Long-day onions do best on nearly all of this ground.',
    ]);
    const mixed = parted.map((point, at) => ({ ...point, entry: entry(at % 2 ? 'short' : 'early-long') }));
    expect(atlasBorders(mixed)).toEqual({ longFromDeg: null, shortToDeg: null });
  });

  test('is how often a kind comes good, where only that one is asked for', () => {
    const [lead] = atlasLead(parted, { shows: 'kind', class: 'long' }, british);
    expect(lead).toContain('come good in nearly every year');
  });

  test('are months by zone, each half of the Earth with its own', () => {
    const told = atlasLead(parted, { shows: 'start', class: null }, british).join(' ');
    expect(told).toContain('North of the tropics the best start mostly falls in March');
    expect(told).toContain('South of the tropics the best start mostly falls in September');
  });

  test('is bare ground, by area: a band near a pole counts for little', () => {
    const bareNorth = parted.map((point) =>
      point.latitudeDeg >= 60 ? { ...point, entry: entry('short', { goodShare: 0 }) } : point,
    );
    // of the strip from 60° S to 70° N, the part from 60° on: (sin 70° − sin 60°) / (sin 70° + sin 60°) = 4 %
    const told = atlasLead(bareNorth, { shows: 'good', class: null }, british).join(' ');
    expect(told).toContain('On a little of the ground good bulbs come in hardly any year');
    const all = parted.map((point) => ({ ...point, entry: entry('short', { goodShare: 0 }) }));
    expect(atlasLead(all, { shows: 'size', class: null }, british)).toEqual([
      'Good bulbs come in hardly any year on this ground.',
    ]);
  });
});

test('bands run from north to south and hold every point once', () => {
  const bands = atlasBands(parted);
  expect(bands.map(({ southDeg }) => southDeg)).toEqual([
    70, 60, 50, 40, 30, 20, 10, 0, -10, -20, -30, -40, -50, -60,
  ]);
  expect(bands.reduce((sum, { points }) => sum + points, 0)).toBe(parted.length);
  const rows = atlasRows(parted, british);
  expect(rows[3].band).toBe('from 40° to 50° N');
  expect(rows[3].kind).toBe('long-day, on nearly all of it');
  expect(rows.at(-1)!.band).toBe('from 50° to 60° S');
});

test('the part of the Earth about a place holds it, across the date line too', () => {
  const about = regionAbout({ latitudeDeg: -18.1, longitudeDeg: 178.4 });
  expect(about.eastDeg).toBeLessThan(about.westDeg);
  const far = regionAbout({ latitudeDeg: 71, longitudeDeg: 25 });
  expect(far.northDeg).toBe(72);
});
