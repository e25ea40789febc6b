import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../../src/calendar/index.ts';
import type { WeatherQuantity } from '../../../../src/weather/index.ts';
import { daysRead, foundIn, hours, readText, two } from './days-read.ts';

const columns = (...asked: [string, WeatherQuantity | null, string | null][]) => ({
  columns: asked.map(([column, as, unit]) => ({ column, as, unit })),
});

describe('the order of dates', () => {
  const table = (...dates: string[]) =>
    `Date,Tmax (°C),Tmin (°C)\n${dates.map((date) => `${date},9,1`).join('\n')}`;
  const first = (text: string, ...more: [Parameters<typeof daysRead>[1]?]) =>
    daysRead(text, ...more)[0]!.slice(0, 10);

  it('is told where one number can be a day alone', () => {
    const dmy = table('11/03/2024', '12/03/2024', '13/03/2024');
    expect([first(dmy), foundIn(dmy).dateOrder]).toEqual(['2024-03-11', null]);
    const mdy = table('3/11/24', '3/12/24', '3/13/24');
    expect([first(mdy), foundIn(mdy).dateOrder]).toEqual(['2024-03-11', null]);
  });

  it('is guessed by what makes days follow each other, and said', () => {
    const dmy = table('01/03/2024', '02/03/2024', '03/03/2024');
    expect([first(dmy), foundIn(dmy).dateOrder]).toEqual(['2024-03-01', 'dmy']);
    const mdy = table('03/01/2024', '03/02/2024', '03/03/2024');
    expect([first(mdy), foundIn(mdy).dateOrder]).toEqual(['2024-03-01', 'mdy']);
    const ymd = table('24-03-31', '24-04-01');
    expect([first(ymd), foundIn(ymd).dateOrder]).toEqual(['2024-03-31', 'ymd']);
    // latest first
    const back = table('03/03/2024', '02/03/2024', '01/03/2024');
    expect([first(back), foundIn(back).dateOrder]).toEqual(['2024-03-01', 'dmy']);
  });

  it('is that of the habits of a file with one day', () => {
    expect(first(table('03/04/2024'))).toBe('2024-04-03');
    expect(first('Date,High (°F),Low (°F)\n03/04/2024,60,40')).toBe('2024-03-04');
  });

  it('is what the reader says', () => {
    const text = table('01/03/2024', '02/03/2024');
    expect(first(text, { dateOrder: 'mdy' })).toBe('2024-01-03');
    expect(foundIn(text, { dateOrder: 'mdy' }).dateOrder).toBe('mdy');
    expect(readText(table('13/03/2024', '14/03/2024'), { dateOrder: 'mdy' })).toMatchObject({
      ok: false,
      issue: { code: 'bad-date' },
    });
  });
});

describe('a correction', () => {
  const text = 'when,a,b,c\n2024-07-01,50,68,2\n2024-07-02,52,70,0';

  it('says what columns hold, and in which unit', () => {
    expect(readText(text)).toMatchObject({ ok: false, issue: { code: 'no-values' } });
    expect(
      daysRead(text, columns(['a', 'tempMinC', '°F'], ['b', 'tempMaxC', '°F'], ['c', 'rainMm', 'cm'])),
    ).toEqual(['2024-07-01 10/20/20', '2024-07-02 11.11/21.11/0']);
    expect(daysRead(text, columns(['a', 'tempMinC', 'tenths'], ['b', 'tempMaxC', 'tenths']))[0]).toBe(
      '2024-07-01 5/6.8/-',
    );
  });

  it('takes the unit of a column for another', () => {
    const stated = 'date,Tmax (°C),Tmin (°C),Rain (mm)\n2024-07-01,68,50,0.5';
    // 68 °C is not believed
    expect(daysRead(stated)).toEqual(['2024-07-01 50/-/0.5']);
    expect(foundIn(stated).flagged).toMatchObject([{ field: 'tempMaxC', value: 68, why: 'out-of-range' }]);
    const asked = columns(
      ['Tmax (°C)', 'tempMaxC', 'F'],
      ['Tmin (°C)', 'tempMinC', '°F'],
      ['Rain (mm)', 'rainMm', 'in'],
    );
    expect(daysRead(stated, asked)).toEqual(['2024-07-01 10/20/12.7']);
    expect(foundIn(stated, asked).columns).toContainEqual({ column: 'Rain (mm)', as: 'rainMm', unit: 'in' });
  });

  it('leaves a column out, and takes another for it', () => {
    const two = 'date,Tmin out,Tmax out,Tmin shed,Tmax shed\n2024-07-01,5,20,3,25';
    expect(daysRead(two)).toEqual(['2024-07-01 5/20/-']);
    expect(daysRead(two, columns(['Tmax out', null, null]))).toEqual(['2024-07-01 5/25/-']);
    expect(daysRead(two, columns(['Tmax shed', 'tempMaxC', null]))).toEqual(['2024-07-01 5/25/-']);
  });

  it('names columns that have no names by their places', () => {
    const bare = '2024-07-01;5,5;20;1,5\n2024-07-02;6;21;0\n';
    const asked = columns(['2', 'tempMinC', '°C'], ['3', 'tempMaxC', '°C'], ['4', 'rainMm', 'mm']);
    expect(daysRead(bare, asked)).toEqual(['2024-07-01 5.5/20/1.5', '2024-07-02 6/21/0']);
  });

  it('says that a counter is one', () => {
    const counted = 'date,tmin,tmax,rain\n2024-07-01,5,20,10\n2024-07-02,6,21,12.5\n2024-07-03,6,21,1';
    expect(daysRead(counted).map((day) => day.split('/')[2])).toEqual(['10', '12.5', '1']);
    const asked = columns(['rain', 'rainSumMm', 'mm']);
    expect(daysRead(counted, asked).map((day) => day.split('/')[2])).toEqual(['-', '2.5', '1']);
  });

  it.each([
    [columns(['d', 'tempMinC', null]), 'unknown-column', 'd'],
    [columns(['a', 'tempMinC', 'mm']), 'unit-unknown', 'a'],
    [columns(['a', 'rainMm', 'furlong']), 'unit-unknown', 'a'],
  ])('%j is refused as %s', (asked, code, field) => {
    expect(readText(text, asked)).toMatchObject({ ok: false, issue: { code, field } });
  });
});

describe('units that nothing states', () => {
  // one day's sun in each: units by their definition, 1 kWh is 3.6 MJ
  it.each([
    ['kWh/m²', 6.25],
    ['MJ/m²', 22.5],
    ['W/m²', 260.42],
    ['J/cm²', 2250],
    ['Wh/m²', 6250],
  ])('of a day’s sun are %s by its size', (unit, sun) => {
    const text = `date,tmin_c,tmax_c,solar\n2024-07-01,5,20,${sun}\n2024-07-02,6,21,${sun / 2}`;
    expect(foundIn(text).columns).toContainEqual({ column: 'solar', as: expect.any(String), unit });
    expect(daysRead(text)).toEqual(['2024-07-01 5/20/-/22.5', '2024-07-02 6/21/-/11.25']);
  });

  it('of rain beside °F are inches, but not where a day would have twenty', () => {
    const text = (most: number) =>
      `date,High (°F),Low (°F),Rain\n2024-07-01,68,50,${most}\n2024-07-02,68,50,1`;
    expect(daysRead(text(2))[0]).toBe('2024-07-01 10/20/50.8');
    expect(daysRead(text(25))[0]).toBe('2024-07-01 10/20/25');
  });
});

describe('doubtful values', () => {
  const table = (...rows: string[]) =>
    `date,tmin_c,tmax_c,rain_mm\n${rows.map((row, at) => `2024-03-${String(at + 1).padStart(2, '0')},${row}`).join('\n')}`;

  it('that can not be are left out and named', () => {
    const text = table('5,15,0', '99,16,1', '4,14,-3', '6,5,0');
    expect(daysRead(text)).toEqual([
      '2024-03-01 5/15/0',
      '2024-03-02 -/16/1',
      '2024-03-03 4/14/-',
      '2024-03-04 6/5/0',
    ]);
    expect(foundIn(text)).toMatchObject({
      flaggedCount: 3,
      flagged: [
        { field: 'tempMinC', value: 99, why: 'out-of-range', leftOut: true },
        { field: 'rainMm', value: -3, why: 'out-of-range', leftOut: true },
        // which of the two is wrong is not known
        { field: 'tempMinC', value: 6, why: 'min-above-max', leftOut: false },
      ],
    });
  });

  it('far from the days beside them are named and stand', () => {
    const text = table('5,15,0', '-14,16,1', '4,14,0', '6,16,0');
    expect(daysRead(text)[1]).toBe('2024-03-02 -14/16/1');
    expect(foundIn(text).flagged).toMatchObject([
      { field: 'tempMinC', value: -14, why: 'outlier', leftOut: false },
    ]);
  });

  it('far from the days beside them are usual where each day is', () => {
    // a winter that swings by 16 °C
    const text = table(...Array.from({ length: 12 }, (_, at) => (at % 2 === 0 ? '-20,-10,0' : '-4,6,0')));
    expect(foundIn(text).flaggedCount).toBe(0);
    // the air changes: that is a step, not a spike
    expect(foundIn(table('2,4,0', '2,20,0', '3,36,0', '3,36,0')).flaggedCount).toBe(0);
  });

  it.each([
    [9, 0],
    [10, 10],
  ])('the same %i days long are %i times doubtful', (long, doubtful) => {
    const { flagged } = foundIn(table('5,15,0', ...Array<string>(long).fill('4,14,0'), '6,16,0'));
    expect(flagged.filter(({ why }) => why === 'stuck')).toHaveLength(doubtful);
  });

  it('that have no day that exists are passed over, and counted', () => {
    const rows = Array.from({ length: 12 }, (_, at) => `${two(at + 18)}.02.2023;9;1`).join('\n');
    const found = foundIn(`Datum;Max (°C);Min (°C)\n${rows}\nMittel;9;1`);
    expect(found.record.days).toBe(11);
    // 29 February 2023; a mean below the days is none of them
    expect(found.passedOver).toEqual({ rows: 1, firstLine: 13 });
    expect(foundIn('date,tmax,tmin\n2024-02-29,9,1').passedOver).toBeUndefined();
  });

  it('for “not measured” are none, and counted', () => {
    const text = table('5,15,0', '-999,-999,-999', '4,14,0');
    expect(daysRead(text)[1]).toBe('2024-03-02 -/-/-');
    expect(foundIn(text)).toMatchObject({
      flaggedCount: 0,
      missingCodes: [
        { column: 'tmin_c', code: -999, days: 1 },
        { column: 'tmax_c', code: -999, days: 1 },
        { column: 'rain_mm', code: -999, days: 1 },
      ],
    });
  });

  it.each([
    [4, 0],
    [5, 1],
  ])('of four hundred days with -9.99 on %i of them are missing by so many codes: %i', (times, codes) => {
    const rows = Array.from(
      { length: 400 },
      (_, at) => `${formatDay(19_723 + at)},${at < times ? -9.99 : -(at % 13)},8`,
    );
    expect(foundIn(`date,tmin_c,tmax_c\n${rows.join('\n')}`).missingCodes).toHaveLength(codes);
  });

  it('are what no hour has, though a day may', () => {
    const rows = hours((hour) => `2024-03-01 ${two(hour)}:00,9,${hour === 5 ? 500 : 0}`);
    expect(foundIn(`time,temp_c,rain_mm\n${rows}`).flagged).toMatchObject([
      { field: 'rainMm', value: 500, why: 'out-of-range', leftOut: true },
    ]);
    expect(foundIn(table('5,15,0', '5,16,500', '5,14,0')).flaggedCount).toBe(0);
  });

  it('are named to the hundredth, and counted beyond', () => {
    const days = Array.from({ length: 150 }, (_, at) => `${formatDay(19_723 + at)},80,90`);
    const { flagged, flaggedCount } = foundIn(
      `date,tmin (°C),tmax (°C),rain\n${days.map((day) => `${day},1`).join('\n')}`,
    );
    expect([flagged.length, flaggedCount]).toEqual([100, 300]);
  });
});
