import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/calendar/index.ts';
import { daysOfReadings, type Readings } from '../../../src/weather/read/days-of-readings.ts';

const nothing = {
  tempC: null,
  tempMinC: null,
  tempMaxC: null,
  rainMm: null,
  rainDayMm: null,
  rainSumMm: null,
  solarW: null,
  solarMJ: null,
};
const first = dayNumber(2024, 3, 1);
/** Hourly readings from midnight of 1 March 2024 on. */
function hourly(
  hours: number,
  values: Partial<Record<keyof typeof nothing, (hour: number) => number>>,
): Readings {
  const minute = Float64Array.from({ length: hours }, (_, hour) => first * 1440 + hour * 60);
  const made: Readings = { minute, ...nothing };
  for (const [name, value] of Object.entries(values)) {
    made[name as 'tempC'] = Float64Array.from({ length: hours }, (_, hour) => value(hour));
  }
  return made;
}
const kept = (values: Float64Array, known: Uint8Array) => [...values].map((v, at) => (known[at] ? v : null));

describe('days of readings', () => {
  it('take the least and most of a day, and an amount to the day in which it fell', () => {
    // the millimetre stamped midnight fell before it
    const { record, daysWithRow } = daysOfReadings(
      hourly(72, { tempC: (hour) => hour % 24, rainMm: (hour) => (hour === 24 ? 1 : 0) }),
    );
    expect([record.firstDay, record.days, daysWithRow]).toEqual([first, 3, 3]);
    expect([...record.tempMinC]).toEqual([0, 0, 0]);
    expect([...record.tempMaxC]).toEqual([23, 23, 23]);
    expect(kept(record.rainMm, record.known.rainMm)).toEqual([1, 0, 0]);
  });

  it('need 20 of 24 values, of each quantity for itself', () => {
    const { record } = daysOfReadings(
      hourly(48, {
        tempC: (hour) => (hour < 4 || (hour >= 24 && hour < 29) ? Number.NaN : hour),
        rainMm: () => 0.5,
      }),
    );
    expect([...record.known.tempMinC]).toEqual([1, 0]);
    expect(record.tempMinC[0]).toBe(4);
    // the first stamp is of the day before, the last hour of the second is not there
    expect(kept(record.rainMm, record.known.rainMm)).toEqual([12, 11.5]);
  });

  it('stand in any order, with a reading written twice and an hour that comes twice', () => {
    const readings = hourly(48, { tempC: (hour) => hour % 24, rainMm: () => 1 });
    const back = { ...readings };
    for (const name of ['minute', 'tempC', 'rainMm'] as const) back[name] = readings[name]!.slice().reverse();
    expect(daysOfReadings(back)).toEqual(daysOfReadings(readings));
    const twice = { ...readings };
    for (const name of ['minute', 'tempC', 'rainMm'] as const) {
      twice[name] = Float64Array.from([...readings[name]!, ...readings[name]!.slice(10, 20)]);
    }
    expect(daysOfReadings(twice)).toEqual(daysOfReadings(readings));
    const autumn = hourly(25, { tempC: (hour) => hour, rainMm: () => 1 });
    for (let at = 3; at < 25; at++) autumn.minute[at]! -= 60;
    expect(daysOfReadings(autumn).record.rainMm[0]).toBe(24);
    // latest first, the second of the two hours stands before the first
    const counter = Float64Array.from({ length: 25 }, (_, at) => 10 + at + (at > 2 ? 2 : 0));
    const latestFirst = {
      ...nothing,
      minute: autumn.minute.slice().reverse(),
      rainSumMm: counter.slice().reverse(),
    };
    expect(daysOfReadings(latestFirst)).toEqual(
      daysOfReadings({ ...nothing, minute: autumn.minute, rainSumMm: counter }),
    );
  });

  it('take a day counter at its highest, also where midnight still shows the day before', () => {
    const shown = (hour: number) => (hour < 30 ? Math.min(hour, 10) / 10 : (hour - 30) / 10);
    const late = daysOfReadings(
      hourly(48, { rainDayMm: (hour) => (hour <= 24 ? shown(hour) : shown(hour) / 5) }),
    );
    expect(late.record.rainMm[0]).toBeCloseTo(1, 9);
    // 0.2 mm by one o'clock, 0.34 from six on; the millimetre that midnight showed was told
    expect(late.record.rainMm[1]).toBeCloseTo(0.54, 9);
    const setBack = daysOfReadings(hourly(72, { rainDayMm: (hour) => (hour % 24) / 10 }));
    expect([...setBack.record.rainMm].map((mm) => Math.round(mm * 10) / 10)).toEqual([2.3, 2.3, 2.3]);
  });

  it('take a counter that goes on for what it rose by, also over being set back', () => {
    const { record } = daysOfReadings(
      hourly(72, { rainSumMm: (hour) => (hour < 30 ? 100 + hour : hour - 30) }),
    );
    // 1 mm an hour; the hour in which it was set back is lost
    expect(kept(record.rainMm, record.known.rainMm)).toEqual([24, 23, 23]);
  });

  it('take a small fall of a counter for its noise, and a large one for a start anew', () => {
    const shown = [100, 101, 100.8, 102, 3, 4];
    const { record } = daysOfReadings(hourly(25, { rainSumMm: (hour) => shown[Math.min(hour, 5)]! }));
    // 1, then 1.2 up from the noise, 3 since it was set back, and 1
    expect(record.rainMm[0]).toBeCloseTo(1 + 1.2 + 3 + 1, 9);
  });

  it('take a counter that is set back at nine for one that goes on', () => {
    // 0.1 mm an hour
    const { record } = daysOfReadings(hourly(73, { rainDayMm: (hour) => ((hour + 15) % 24) / 10 + 0.1 }));
    expect(kept(record.rainMm, record.known.rainMm).slice(1, 3)).toEqual([
      expect.closeTo(2.4, 9),
      expect.closeTo(2.4, 9),
    ]);
    // what fell before the first reading is not known, and its day of twenty readings is one all the same
    const late = hourly(73, { rainDayMm: (hour) => ((hour + 19) % 24) / 10 + 0.1 });
    const minute = late.minute.map((at) => at + 240);
    expect(daysOfReadings({ ...late, minute }).record.known.rainMm[0]).toBe(1);
  });

  it('give an amount to the day in which most of its interval lies', () => {
    const late = hourly(48, { rainMm: (hour) => (hour === 24 ? 1 : 0) });
    for (const [minutes, days] of [
      [15, [1, 0]],
      [45, [0, 1]],
    ] as const) {
      const minute = late.minute.map((at) => at + minutes);
      expect([...daysOfReadings({ ...late, minute }).record.rainMm]).toEqual(days);
    }
  });

  it('make energy of power over the time since the reading before, and no more than it knows over a gap', () => {
    const hours = [0, 1, 2, 3, 4, 5, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23];
    const sun = (missing: (hour: number) => boolean) => {
      const left = hours.filter((hour) => !missing(hour));
      const minute = Float64Array.from(left, (hour) => first * 1440 + hour * 60 + 30);
      const solarW = new Float64Array(left.length).fill(100);
      return daysOfReadings({ ...nothing, minute, solarW }).record.solarMJ[0];
    };
    // 100 W for an hour are 0.36 MJ: twice that where one reading is missing, once where the gap is longer
    expect(sun(() => false)).toBeCloseTo(24 * 0.36, 9);
    expect(sun((hour) => hour === 5 || hour === 8)).toBeCloseTo(21 * 0.36 + 0.36, 9);
  });

  it('make energy of power, and a day of a station that writes no night', () => {
    const sun = (hour: number) => {
      const clock = hour % 24;
      return clock >= 6 && clock <= 18 ? 500 * Math.sin((Math.PI * (clock - 6)) / 12) : Number.NaN;
    };
    const { record } = daysOfReadings(hourly(48, { tempC: () => 1, solarW: sun }));
    // hourly sum of a half sine: 500 W × 2 × 12 / π h × 3600 s, by the trapezoid rule 0.57 % less
    expect(record.solarMJ[0]).toBeCloseTo((500 * (12 / Math.PI) * 2 * 3600 * 0.9943) / 1e6, 1);
    const broken = daysOfReadings(
      hourly(48, { solarW: (hour) => (hour % 24 === 12 ? Number.NaN : sun(hour)) }),
    );
    expect([...broken.record.known.solarMJ]).toEqual([0, 0]);
    // three readings from dark to dark are too few to be a day
    const few = daysOfReadings(
      hourly(48, { solarW: (hour) => ([0, 500, 0] as number[])[(hour % 24) - 11] ?? Number.NaN }),
    );
    expect([...few.record.known.solarMJ]).toEqual([0, 0]);
    // nor is an afternoon
    const cut = daysOfReadings(hourly(48, { solarW: (hour) => (hour % 24 < 12 ? Number.NaN : sun(hour)) }));
    expect([...cut.record.known.solarMJ]).toEqual([0, 0]);
  });
});
