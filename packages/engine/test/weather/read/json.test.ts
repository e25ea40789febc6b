import { describe, expect, test } from 'vitest';
import { foundIn, issueIn } from './texts.ts';

const power = (parameter: object, more: object = {}) =>
  JSON.stringify({
    type: 'Feature',
    geometry: { type: 'Point', coordinates: [-58.25, -34.75, 15.35] },
    properties: { parameter },
    header: { fill_value: -999 },
    ...more,
  });

describe('NASA POWER, JSON', () => {
  test('has longitude first and a number that stands for none', () => {
    const { days, found } = foundIn(
      power({
        T2M: { '20240228': 10, '20240229': 11, '20240301': 12 },
        T2M_MAX: { '20240228': 15, '20240229': -999, '20240301': 17.5 },
        T2M_MIN: { '20240228': 5.25, '20240229': 6, '20240301': 7 },
        PRECTOTCORR: { '20240228': 0, '20240229': 12.5, '20240301': -999 },
      }),
    );
    expect(found.station).toEqual({
      name: null,
      latitudeDeg: -34.75,
      longitudeDeg: -58.25,
      elevationM: 15.35,
    });
    expect(found.unused).toEqual(['T2M']);
    expect(days).toEqual([
      ['2024-02-28', 15, 5.25, 0],
      ['2024-02-29', null, 6, 12.5],
      ['2024-03-01', 17.5, 7, null],
    ]);
  });

  test('has sun in kilowatt hours where it says so', () => {
    const { record } = foundIn(
      power(
        { ALLSKY_SFC_SW_DWN: { '20240228': 5 } },
        { parameters: { ALLSKY_SFC_SW_DWN: { units: 'kW-hr/m^2/day' } } },
      ),
    );
    // 1 kWh is 3.6 MJ
    expect(record.solarMJ[0]).toBeCloseTo(18, 9);
  });

  test('by the hour makes days, of those with enough hours', () => {
    const hours = (day: string, count: number) =>
      Array.from({ length: count }, (_, at) => [`${day}${String(at).padStart(2, '0')}`, at] as const);
    const all = Object.fromEntries([...hours('20240228', 24), ...hours('20240229', 19)]);
    const ones = Object.fromEntries(Object.keys(all).map((stamp) => [stamp, 1]));
    const { days } = foundIn(power({ T2M: all, PRECTOTCORR: ones }));
    expect(days).toEqual([
      ['2024-02-28', 23, 0, 24],
      ['2024-02-29', null, null, null],
    ]);
  });

  test.each([
    ['months', power({ T2M_MAX: { '202413': 5 } }), 'bad-date'],
    ['other parameters', power({ WS2M: { '20240228': 5 } }), 'no-values'],
    ['half a document', power({ T2M_MAX: { '20240228': 5 } }).slice(0, -9), 'bad-json'],
    [
      'a unit of its own',
      power({ T2M_MAX: { '20240228': 5 } }, { parameters: { T2M_MAX: { units: 'R' } } }),
      'unit-unknown',
    ],
  ])('with %s is refused', (_, text, code) => {
    expect(issueIn(text)?.code).toBe(code);
  });
});

const times = (days: readonly string[]) =>
  days.flatMap((day) => Array.from({ length: 24 }, (_, at) => `${day}T${String(at).padStart(2, '0')}:00`));

describe('Open-Meteo, JSON', () => {
  const head = { latitude: 52.1, longitude: -3.1, elevation: 180, utc_offset_seconds: 0 };
  const hourly = {
    ...head,
    hourly_units: { time: 'iso8601', temperature_2m: '°C', precipitation: 'mm' },
    hourly: {
      time: times(['2024-02-28', '2024-02-29']),
      temperature_2m: Array.from({ length: 48 }, (_, at) => at),
      precipitation: Array.from({ length: 48 }, (_, at) => (at === 24 ? 5 : 0)),
    },
  };

  test('by the hour makes days; rain stamped at midnight fell the day before', () => {
    const { days, found } = foundIn(JSON.stringify(hourly));
    expect(days).toEqual([
      ['2024-02-28', 23, 0, 5],
      ['2024-02-29', 47, 24, 0],
    ]);
    expect(found).toMatchObject({ timeBase: 'utc', station: { latitudeDeg: 52.1, elevationM: 180 } });
  });

  test('makes them of the standard time that is asked for', () => {
    const { days, found } = foundIn(JSON.stringify(hourly), { utcOffsetH: 2 });
    // from 2 to 23 o'clock, 22 hours, are enough
    expect(days[0]!.slice(0, 3)).toEqual(['2024-02-28', 21, 0]);
    expect(days[1]).toEqual(['2024-02-29', 45, 22, 5]);
    expect(days[2]![1]).toBeNull();
    expect(found.timeBase).toBe('local-standard');
  });

  test('by the day stands as it is, in the units it names, before what its hours make', () => {
    const daily = {
      time: ['2024-02-28', '2024-02-29', '2024-03-01'],
      temperature_2m_max: [50, null, 59],
      temperature_2m_min: [41, 32, 14],
      precipitation_sum: [0.1, 0, 1],
    };
    const units = { temperature_2m_max: '°F', temperature_2m_min: '°F', precipitation_sum: 'inch' };
    const { days } = foundIn(JSON.stringify({ ...hourly, daily_units: units, daily }));
    expect(days).toEqual([
      ['2024-02-28', 10, 5, 2.54],
      // its hours fill what the day lacks
      ['2024-02-29', 47, 0, 0],
      ['2024-03-01', 15, -10, 25.4],
    ]);
  });

  test('counts seconds from 1970 in UTC', () => {
    const from = Date.UTC(2024, 1, 28) / 1000;
    const text = JSON.stringify({
      ...head,
      utc_offset_seconds: 3600,
      daily_units: { time: 'unixtime' },
      // midnight of a place an hour ahead
      daily: { time: [from - 3600, from + 82_800], temperature_2m_max: [1, 2], temperature_2m_min: [0, 1] },
    });
    expect(foundIn(text).days.map(([date]) => date)).toEqual(['2024-02-28', '2024-02-29']);
  });

  test('of several places is read for the first, and the others are told', () => {
    const { found } = foundIn(JSON.stringify([hourly, { ...hourly, latitude: 40, longitude: 5 }]));
    expect(found.otherStations).toEqual(['40, 5']);
  });

  test.each([
    [
      'times that are none',
      JSON.stringify({ ...hourly, hourly: { ...hourly.hourly, time: ['noon'] } }),
      'bad-date',
    ],
    [
      'wind alone',
      JSON.stringify({ ...head, hourly: { time: times(['2024-02-28']), wind_speed_10m: [] } }),
      'no-values',
    ],
    ['no times', JSON.stringify({ ...hourly, hourly: { ...hourly.hourly, time: [] } }), 'no-days'],
  ])('with %s is refused', (_, text, code) => {
    expect(issueIn(text)?.code).toBe(code);
  });
});
