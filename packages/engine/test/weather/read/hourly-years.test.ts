import { describe, expect, test } from 'vitest';
import { foundIn, issueIn } from './texts.ts';

const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

type Hour = { year: number; month: number; date: number; hour: number };

/** Hours 1 to 24 of every day of months, each of a year. */
function hoursOf(years: readonly number[], months = years.map((_, at) => at + 1)): Hour[] {
  return years.flatMap((year, at) =>
    Array.from({ length: lengths[months[at]! - 1]! * 24 }, (_, index) => ({
      year,
      month: months[at]!,
      date: Math.floor(index / 24) + 1,
      hour: (index % 24) + 1,
    })),
  );
}

/** An EPW line: temperature stands seventh, sun fourteenth, rain thirty-fourth (Auxiliary Programs manual). */
function epwRow({ year, month, date, hour }: Hour, temp: string, sun = '9999', rain = '999'): string {
  const cells = Array.from({ length: 35 }, () => '0');
  cells.splice(0, 7, String(year), String(month), String(date), String(hour), '0', '?9', temp);
  cells[13] = sun;
  cells[33] = rain;
  return cells.join(',');
}

const head = (source: string) =>
  [
    `LOCATION,Pencarreg Bank,-,GBR,${source},unknown,52.08,-3.13,0.0,210.0`,
    'DESIGN CONDITIONS,0',
    'TYPICAL/EXTREME PERIODS,0',
    'GROUND TEMPERATURES,0',
    'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
    'COMMENTS 1,none',
    'COMMENTS 2,none',
    'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
  ].join('\r\n');
const epw = (hours: readonly Hour[], row: (hour: Hour) => string, source = 'station') =>
  [head(source), ...hours.map(row)].join('\r\n');

const typical = hoursOf([2003, 2011, 2003, 2007, 2001, 2014, 2009, 2003, 2012, 2005, 2006, 2004]);

describe('EPW', () => {
  test('of months of different years is a typical year, told in days of 2001', () => {
    const told = foundIn(epw(typical, (hour) => epwRow(hour, String(hour.hour), '100', '0.1')));
    expect(told.found.format).toBe('epw');
    expect(told.typicalYear).toBe(true);
    expect(told.days).toHaveLength(365);
    // hour 24 belongs to the printed day
    expect(told.days[0]).toEqual(['2001-01-01', 24, 1, 2.4]);
    expect(told.days.at(-1)).toEqual(['2001-12-31', 24, 1, 2.4]);
    // 24 times 100 Wh are 8.64 MJ
    expect(told.record.solarMJ[0]).toBeCloseTo(8.64, 9);
  });

  test('has no 29 February, as typical years have none', () => {
    const leapDay = Array.from({ length: 24 }, (_, at) => ({ year: 2004, month: 2, date: 29, hour: at + 1 }));
    const march = typical.findIndex(({ month }) => month === 3);
    const rows = [...typical.slice(0, march), ...leapDay, ...typical.slice(march)];
    const { days } = foundIn(epw(rows, (hour) => epwRow(hour, leapDay.includes(hour) ? '40' : '5')));
    expect(days).toHaveLength(365);
    expect(days[59]).toEqual(['2001-03-01', 5, 5, null]);
  });

  test('of one year is weather that came, unless its source is one of typical years', () => {
    const real = hoursOf([2019, 2019, 2019], [1, 2, 3]);
    const row = (hour: Hour) => epwRow(hour, '5');
    expect(foundIn(epw(real, row))).toMatchObject({ typicalYear: false });
    expect(foundIn(epw(real, row)).days[0]![0]).toBe('2019-01-01');
    expect(foundIn(epw(real, row, 'IWEC Data')).typicalYear).toBe(true);
    // chosen months of later and later years
    expect(foundIn(epw(hoursOf([1998, 2000, 2003], [1, 2, 3]), row)).typicalYear).toBe(true);
    const overNewYear = hoursOf([2018, 2018, 2019, 2019], [11, 12, 1, 2]);
    expect(foundIn(epw(overNewYear, row)).typicalYear).toBe(false);
  });

  test('has a number for “missing” in each column, and counts days with 20 of 24 hours', () => {
    const { days, record } = foundIn(
      epw(hoursOf([2019], [1]), (hour) => epwRow(hour, hour.date === 1 && hour.hour > 19 ? '99.9' : '4')),
    );
    expect(days[0]).toEqual(['2019-01-01', null, null, null]);
    expect(days[1]).toEqual(['2019-01-02', 4, 4, null]);
    expect(record.known.solarMJ.some((known) => known === 1)).toBe(false);
  });

  test('names the line of a row at fault', () => {
    const text = epw(hoursOf([2019], [1]), (hour) => epwRow(hour, hour.date === 2 ? 'warm' : '4'));
    expect(issueIn(text)).toMatchObject({ line: 33, received: 'warm' });
    expect(issueIn(head('station'))?.code).toBe('no-days');
  });
});

describe('TMY3', () => {
  const row = ({ year, month, date, hour }: Hour, temp: string, rain = '-9900') =>
    [
      `${String(month).padStart(2, '0')}/${String(date).padStart(2, '0')}/${year}`,
      `${String(hour).padStart(2, '0')}:00`,
      ...['0', '0', '1', temp, '1', rain],
    ].join(',');
  const text = (line: (hour: Hour) => string) =>
    [
      '999999,"PENCARREG BANK",GB,0.0,52.080,-3.130,210',
      'Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,Dry-bulb (C),Dry-bulb source,Lprecip depth (mm)',
      ...typical.map(line),
    ].join('\n');

  test('is a typical year, of which 24:00 belongs to the printed day', () => {
    const { days, found } = foundIn(text((hour) => row(hour, String(hour.hour), '1')));
    expect(found).toMatchObject({ format: 'tmy3', typicalYear: true });
    expect(found.station).toEqual({
      name: 'PENCARREG BANK',
      latitudeDeg: 52.08,
      longitudeDeg: -3.13,
      elevationM: 210,
    });
    expect(days).toHaveLength(365);
    expect(days[0]).toEqual(['2001-01-01', 24, 1, 24]);
  });

  test('has no rain where it stands at −9900 throughout', () => {
    const { days, found } = foundIn(text((hour) => row(hour, '5')));
    expect(days[0]).toEqual(['2001-01-01', 5, 5, null]);
    expect(found.columns.map(({ as }) => as)).toEqual(['tempC', 'solarMJ']);
  });
});
