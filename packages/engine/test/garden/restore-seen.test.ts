import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber, formatDay, parseDay } from '../../src/calendar/index.ts';
import {
  gardenRanges,
  gardenSchemaName,
  isDate,
  isFeed,
  longestNote,
  longList,
  mostWeatherDays,
  observedNumbers,
  restoreGarden,
} from '../../src/garden/index.ts';
import { gardenEntries } from '../../src/limits/index.ts';
import { recordFields } from '../../src/weather/index.ts';

const seen = { id: 'o1', plantingId: 'first', date: '2027-05-20' };
const weather = {
  id: 'w1',
  placeId: 'bank',
  firstDate: '2027-05-01',
  tempMinC: [4, null],
  tempMaxC: [15, 16.5],
  rainMm: [0, 3.2],
  solarMJ: [null, 12],
  forecastFrom: '2027-05-02',
  sources: [{ name: 'gate.csv', format: null, from: '2027-05-01', to: '2027-05-02' }],
};
const restoredSeen = (entry: object) => {
  const { garden, changes } = restoreGarden({ schema: gardenSchemaName, observations: [entry] });
  return { entry: garden.observations[0], changes };
};
const restoredWeather = (entry: object) => {
  const { garden, changes } = restoreGarden({ schema: gardenSchemaName, weather: [entry] });
  return { entry: garden.weather[0], changes };
};

describe('of an observation', () => {
  test.each(observedNumbers)('%s stays in its range, ends included, and is left out beyond', (field) => {
    const [low, high] = gardenRanges[field];
    for (const value of [low, high]) {
      const entry = { ...seen, [field]: value };
      expect(restoredSeen(entry)).toEqual({ entry, changes: [] });
    }
    for (const value of [low - 0.001, high + 0.001, '3', true, [], Number.NaN]) {
      const { entry, changes } = restoredSeen({ ...seen, [field]: value });
      expect(entry).toEqual(seen);
      expect(changes).toMatchObject([{ code: 'emptied', path: `observations[0].${field}` }]);
    }
  });

  test.each([
    ['fedProduct', '10-4-8', '10-4'],
    ['fedProduct', '0-0-62.5', '60-40-1'],
    ['lifted', true, 'yes'],
    ['note', 'After rain.', 7],
  ])('%s %j stays, and %j is left out', (field, good, bad) => {
    const entry = { ...seen, [field]: good };
    expect(restoredSeen(entry)).toEqual({ entry, changes: [] });
    const { entry: mended, changes } = restoredSeen({ ...seen, [field]: bad });
    expect(mended).toEqual(seen);
    expect(changes).toMatchObject([{ code: 'emptied', path: `observations[0].${field}` }]);
  });

  test('nothing, false and null where something might stand is no damage', () => {
    const { entry, changes } = restoredSeen({ ...seen, lifted: false, leavesGreen: null, note: null });
    expect({ entry, changes }).toEqual({ entry: seen, changes: [] });
  });

  test('a longer note is cut, and told', () => {
    const { entry, changes } = restoredSeen({ ...seen, note: 'x'.repeat(longestNote + 1) });
    expect(entry.note).toHaveLength(longestNote);
    expect(changes).toMatchObject([{ code: 'emptied', path: 'observations[0].note' }]);
  });

  test.each([undefined, null, '2027-02-30', '20.5.2027', 20_820])('without a day (%s) it is none', (date) => {
    const { entry, changes } = restoredSeen({ ...seen, date });
    expect(entry).toBeUndefined();
    expect(changes).toMatchObject([{ code: 'entry-dropped' }]);
  });

  test('it is kept when its planting is gone, and when it never had one', () => {
    for (const plantingId of ['gone', null]) {
      const entry = { ...seen, plantingId };
      expect(restoredSeen(entry)).toEqual({ entry, changes: [] });
    }
    const { plantingId: _, ...alone } = seen;
    expect(restoredSeen(alone)).toEqual({ entry: { ...seen, plantingId: null }, changes: [] });
  });
});

describe('of kept weather', () => {
  test('whole, it stays as it is', () => {
    expect(restoredWeather(weather)).toEqual({ entry: weather, changes: [] });
  });

  test.each(recordFields)('values of %s out of range are unknown, told once', (field) => {
    const [low, high] = gardenRanges[field];
    const { entry, changes } = restoredWeather({ ...weather, [field]: [low - 1, high + 1] });
    expect(entry).toEqual({ ...weather, [field]: [null, null] });
    expect(changes).toMatchObject([{ code: 'emptied', path: `weather[0].${field}[0]` }]);
  });

  test('columns shorter than the longest end in unknown days', () => {
    const { entry } = restoredWeather({ ...weather, rainMm: [1], solarMJ: undefined });
    expect(entry).toMatchObject({ rainMm: [1, null], solarMJ: [null, null] });
  });

  test('without a first day, or without any day, it is none', () => {
    const none = Object.fromEntries(recordFields.map((field) => [field, []]));
    for (const damage of [{ firstDate: 'May' }, none])
      expect(restoredWeather({ ...weather, ...damage }).entry).toBeUndefined();
  });

  test('of more than a century the latest days stay, each on its date', () => {
    const days = mostWeatherDays + 3;
    const tempMaxC = Array.from({ length: days }, (_, day) => day % 40);
    const { entry, changes } = restoredWeather({ ...weather, tempMaxC });
    expect(entry.firstDate).toBe('2027-05-04');
    expect(entry.tempMaxC).toEqual(tempMaxC.slice(3));
    expect(entry.rainMm).toEqual(Array(mostWeatherDays).fill(null));
    expect(changes).toMatchObject([{ code: 'emptied', path: 'weather[0].firstDate' }]);
  });

  test('sources that do not say what they are go', () => {
    const sources = [
      ...weather.sources,
      { name: 'x', format: null, from: '2027-05-02', to: '2027-05-01' },
      7,
    ];
    expect(restoredWeather({ ...weather, sources }).entry).toEqual(weather);
  });
});

const odd = fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.constantFrom(3, 0.5, '10-4-8', '2027-05-20', true));
const fields = [...observedNumbers, 'id', 'plantingId', 'fedProduct', 'lifted', 'note', 'terrace'];
const day = fc.constantFrom('2027-05-20', '2027-02-30', 7, null);

test('restored twice is restored once, and fields unknown here stay', () => {
  const observation = fc
    .tuple(day, fc.dictionary(fc.constantFrom(...fields), odd))
    .map(([date, rest]): Record<string, unknown> => ({ ...rest, date }));
  const record = fc
    .tuple(day, fc.dictionary(fc.constantFrom(...recordFields, 'placeId', 'fence'), fc.array(odd)))
    .map(([firstDate, rest]) => ({ ...rest, firstDate }));
  fc.assert(
    fc.property(fc.array(observation), fc.array(record), (observations, records) => {
      const found = { schema: gardenSchemaName, observations, weather: records };
      const { garden } = restoreGarden(found);
      expect(restoreGarden(garden)).toEqual({ garden, changes: [] });
      const dated = observations.filter(({ date }) => isDate(date));
      expect(garden.observations.map(({ terrace }) => terrace)).toEqual(dated.map(({ terrace }) => terrace));
    }),
    { seed: 20270520, numRuns: 300 },
  );
});

test('the lists of a garden are of lengths of their own', () => {
  const count = gardenEntries.observations + 1;
  const observations = Array(count).fill(null);
  const most = gardenEntries.observations;
  expect(longList({ observations })).toEqual({ list: 'observations', count, most });
  expect(longList({ observations: observations.slice(1) })).toBeNull();
  expect(longList({ weather: observations })).toMatchObject({ list: 'weather', most: gardenEntries.weather });
});

// Fertiliser labels give N-P-K as per cent by weight (Regulation (EU) 2019/1009, annex III)
test('numbers of a feed are per cent, and not more than a whole', () => {
  for (const feed of ['10-10-10', '0-0-0', '33.5-33.5-33', '100-0-0']) expect(isFeed(feed)).toBe(true);
  for (const none of ['10-10', '50-50-1', '-1-2-3', '1e1-2-3', ' 1-2-3', '', 7, null])
    expect(isFeed(none)).toBe(false);
});

test('a date is read as it is written, in the years of the calendar', () => {
  expect([isDate('2028-02-29'), isDate('2027-02-29'), isDate('2027-5-1')]).toEqual([true, false, false]);
  const first = dayNumber(1, 1, 1);
  for (let at = first; at < first + 800_000; at += 997) expect(parseDay(formatDay(at))).toBe(at);
});
