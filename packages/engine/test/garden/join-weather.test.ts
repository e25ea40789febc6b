import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type ComingWeather,
  comingOf,
  type DailyRecord,
  dayNumber,
  emptyRecord,
  type GardenWeather,
  gardenRanges,
  gardenWeatherOf,
  joinWeather,
  mostWeatherDays,
  noCorrections,
  readWeather,
  recordFields,
  recordOfGarden,
  restoreGarden,
} from '../../src/index.ts';

const first = dayNumber(2026, 1, 1);
const head = { id: 'w', placeId: 'p', sources: [], forecastFrom: null };

/** Days from `from` after New Year on, of one value each; null where nothing was measured. */
function recordOf(from: number, maxC: readonly (number | null)[]): DailyRecord {
  const record = emptyRecord(first + from, maxC.length);
  for (const [at, value] of maxC.entries()) {
    if (value === null) continue;
    record.tempMaxC[at] = value;
    record.known.tempMaxC[at] = 1;
  }
  return record;
}

const coming = (record: DailyRecord, forecastFrom: number | null = null): ComingWeather => ({
  ...head,
  record,
  forecastFrom: forecastFrom === null ? null : first + forecastFrom,
});

function kept(
  from: number,
  maxC: readonly (number | null)[],
  forecastFrom: number | null = null,
): GardenWeather {
  return joinWeather(null, coming(recordOf(from, maxC), forecastFrom), 'ask').weather!;
}

const values = fc.array(fc.option(fc.integer({ min: -300, max: 400 }).map((tenths) => tenths / 10)), {
  minLength: 1,
  maxLength: 12,
});
const span = fc
  .tuple(fc.integer({ min: 0, max: 15 }), values)
  .filter(([, maxC]) => maxC.some((one) => one !== null));

describe('weather laid over what a garden keeps', () => {
  test('asks where measured days differ, and changes nothing before', () => {
    const before = kept(0, [1, 2, 3]);
    const joined = joinWeather(before, coming(recordOf(1, [2.04, 5, 6])), 'ask');
    expect(joined.weather).toBeNull();
    expect(joined.question).toMatchObject({ days: 2, differing: 1, largest: { tempMaxC: 2 } });
    expect(joined.question!.examples).toEqual([{ day: first + 2, field: 'tempMaxC', earlier: 3, later: 5 }]);
    expect(joinWeather(before, coming(recordOf(1, [2.04, 5, 6])), 'keep').weather!.tempMaxC).toEqual([
      1, 2, 3, 6,
    ]);
    expect(joinWeather(before, coming(recordOf(1, [2.04, 5, 6])), 'take').weather!.tempMaxC).toEqual([
      1, 2.04, 5, 6,
    ]);
  });

  test('takes the place of a forecast without a question, and keeps what of it lies ahead', () => {
    const before = kept(0, [1, 2, 20, 20, 20], 2);
    expect(before.forecastFrom).toBe('2026-01-03');
    const { weather } = joinWeather(before, coming(recordOf(2, [3, 4])), 'ask');
    expect(weather!.tempMaxC).toEqual([1, 2, 3, 4, 20]);
    expect(weather!.forecastFrom).toBe('2026-01-05');
    expect(joinWeather(before, coming(recordOf(2, [3, 4, 5])), 'ask').weather!.forecastFrom).toBeNull();
  });

  test('has the later of two forecasts', () => {
    const { weather } = joinWeather(kept(0, [1, 20, 20], 1), coming(recordOf(1, [30, 30]), 1), 'ask');
    expect(weather).toMatchObject({ tempMaxC: [1, 30, 30], forecastFrom: '2026-01-02' });
  });

  test('lets no forecast take the place of a measured day', () => {
    const { weather } = joinWeather(kept(0, [1, 2, 3]), coming(recordOf(1, [2, 9, 10]), 2), 'take');
    expect(weather!.tempMaxC).toEqual([1, 2, 3, 10]);
    expect(weather!.forecastFrom).toBe('2026-01-04');
  });

  test('holds a century, the latest', () => {
    const long = Array.from({ length: mostWeatherDays + 400 }, (_, at) => (at % 50) / 2);
    const weather = kept(-mostWeatherDays, long);
    expect(weather.tempMaxC).toHaveLength(mostWeatherDays);
    expect(weather.tempMaxC.at(-1)).toBe(long.at(-1));
  });

  test('keeps what other programs wrote beside it, and names each source once', () => {
    const source = { name: 'a.csv', format: 'own-table', from: '2026-01-01', to: '2026-01-02' };
    const before = { ...kept(0, [1, 2]), sources: [source], hue: 7 };
    const { weather } = joinWeather(before, { ...coming(recordOf(0, [1, 2])), sources: [source] }, 'ask');
    expect(weather).toEqual(before);
    // the same name, of other days: a file of its own
    const next = { ...source, from: '2026-01-03', to: '2026-01-03' };
    const more = joinWeather(before, { ...coming(recordOf(2, [3])), sources: [next] }, 'ask');
    expect(more.weather!.sources).toEqual([source, next]);
  });

  test('leaves out days whose minimum is above their maximum', () => {
    const record = recordOf(0, [5, 6]);
    record.tempMinC.set([9, 1]);
    record.known.tempMinC.fill(1);
    expect(gardenWeatherOf(record, head)).toMatchObject({
      firstDate: '2026-01-02',
      tempMinC: [1],
      tempMaxC: [6],
    });
  });

  test('comes back from a record and from a file as it was', () => {
    fc.assert(
      fc.property(span, ([from, maxC]) => {
        const weather = kept(from, maxC);
        expect(gardenWeatherOf(recordOfGarden(weather), head)).toEqual(weather);
        const { garden, changes } = restoreGarden(
          JSON.parse(JSON.stringify({ schema: 'neckfall/garden@1', weather: [weather] })),
        );
        expect(changes).toEqual([]);
        expect(garden.weather[0]!.tempMaxC).toEqual(weather.tempMaxC);
      }),
    );
  });

  test('knows what either knew, whatever is chosen, and joins the same again without a word', () => {
    fc.assert(
      fc.property(
        span,
        span,
        fc.constantFrom('keep' as const, 'take' as const),
        ([a, one], [b, two], choice) => {
          const { weather } = joinWeather(kept(a, one), coming(recordOf(b, two)), choice);
          const record = recordOfGarden(weather!);
          const at = (of: readonly (number | null)[], from: number, day: number) => of[day - from] ?? null;
          for (let day = 0; day < 30; day++) {
            const [before, after] = [at(one, a, day), at(two, b, day)];
            const expected = choice === 'keep' ? (before ?? after) : (after ?? before);
            const place = first + day - record.firstDay;
            expect(record.known.tempMaxC[place] === 1 ? record.tempMaxC[place] : null).toBe(expected);
          }
          const again = joinWeather(weather, coming(recordOfGarden(weather!)), 'ask');
          expect(again).toEqual({ weather, question: null });
        },
      ),
    );
  });
});

test('what was read comes with its files and their days; a typical year is no weather that came', () => {
  const text = 'date,tmax_c,tmin_c\n2026-01-01,9,1\n2026-01-02,8,2';
  const read = readWeather([{ file: 'gate.csv', text, encoding: 'utf-8' }], noCorrections, { utcOffsetH: 0 });
  if (!read.ok) throw new Error('not read');
  expect(comingOf(read.reading, 'w', 'p')).toMatchObject({
    ...head,
    sources: [{ name: 'gate.csv', format: 'own-table', from: '2026-01-01', to: '2026-01-02' }],
  });
  expect(comingOf({ ...read.reading, typicalYear: true }, 'w', 'p')).toBeNull();
});

test('nothing known is nothing kept', () => {
  expect(joinWeather(null, coming(recordOf(0, [null, null])), 'ask')).toEqual({
    weather: null,
    question: null,
  });
  expect(joinWeather(kept(3, [1]), coming(recordOf(0, [null])), 'ask').weather!.firstDate).toBe('2026-01-04');
});

test('a garden keeps each quantity of a record', () => {
  expect(recordFields.filter((field) => !(field in gardenRanges))).toEqual([]);
});
