import { noCorrections, readWeather } from '@neckfall/engine';
import { expect, test } from 'vitest';
import { checkAnswer, roundedPoint } from '../../src/index.ts';
import { recordedAnswer } from './recorded-answer.ts';

const today = 20_989;
const point = roundedPoint({ latitudeDeg: 52.0837, longitudeDeg: -3.1291 });

type Answer = ReturnType<typeof recordedAnswer>;

/** What is said to an answer that differs from the recorded one in this. */
function checked(change: (answer: Answer) => object, asked = point) {
  const text = JSON.stringify(change(recordedAnswer(today)));
  const result = readWeather([{ file: 'weather.example', text, encoding: 'utf-8' }], noCorrections, {
    utcOffsetH: null,
  });
  return result.ok ? checkAnswer(result.reading.files[0], asked, today) : 'unread';
}

test('an answer as it was recorded is the one that was asked for', () => {
  expect(checked((answer) => answer)).toBeNull();
  // the day may have changed there already
  expect(checked(() => recordedAnswer(today + 1))).toBeNull();
});

test('another place is refused, whichever side of the date line it lies', () => {
  expect(checked((answer) => ({ ...answer, latitude: 48.1 }))).toEqual({
    code: 'other-place',
    latitudeDeg: 48.1,
    longitudeDeg: -3.1199951,
  });
  expect(checked((answer) => ({ ...answer, longitude: 3.12 }))).toMatchObject({ code: 'other-place' });
  expect(checked(({ latitude, ...answer }) => answer)).toMatchObject({
    code: 'other-place',
    latitudeDeg: null,
  });
  const fiji = { latitudeDeg: -17, longitudeDeg: 180 };
  expect(checked((answer) => ({ ...answer, latitude: -17.1, longitude: -179.9 }), fiji)).toBeNull();
});

test('other units are refused, even such as could be read', () => {
  const inUnits = (units: Partial<Answer['daily_units']>) =>
    checked((answer) => ({ ...answer, daily_units: { ...answer.daily_units, ...units } }));
  expect(inUnits({ temperature_2m_max: '°F' })).toEqual({
    code: 'other-units',
    column: 'temperature_2m_max',
    unit: '°F',
    expected: '°C',
  });
  expect(inUnits({ precipitation_sum: 'inch' })).toMatchObject({ code: 'other-units', expected: 'mm' });
});

test('other days are refused, and hours where days were asked for', () => {
  expect(checked(() => recordedAnswer(today - 3))).toEqual({
    code: 'other-days',
    from: today - 95,
    to: today + 12,
  });
  expect(checked(() => recordedAnswer(today + 400))).toMatchObject({ code: 'other-days' });
  const { daily, ...head } = recordedAnswer(today);
  const hourly = { time: daily.time.map((day) => `${day}T12:00`), temperature_2m: daily.temperature_2m_max };
  expect(checked(() => ({ ...head, hourly_units: { temperature_2m: '°C' }, hourly }))).not.toBeNull();
});
