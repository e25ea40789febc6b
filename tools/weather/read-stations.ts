import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dayNumber, parseDay } from '../../packages/engine/src/calendar/index.ts';
import { type DayValues, recordFromDays, type StationRecord } from './station-record.ts';

/*
 * Just enough reading to fit and check the generator on records with quirks known beforehand; the product's
 * importers are another matter. Coordinates: the file's where it has them, else memory, to a tenth of a degree.
 */

const number = (text: string | undefined) =>
  text === undefined || text.trim() === '' ? Number.NaN : Number(text);
const linesOf = (path: string) => readFileSync(path, 'utf8').split(/\r?\n/);
const cellsOf = (line: string) => line.split(',').map((cell) => cell.replaceAll('"', '').trim());

/** Seattle and New York 2012–2015 of vega-datasets, `weather.csv`. */
export function readVega(path: string): StationRecord[] {
  const rows = linesOf(path).slice(1).map(cellsOf);
  const station = (
    name: string,
    latitudeDeg: number,
    longitudeDeg: number,
    elevationM: number,
  ): StationRecord => {
    const days = rows
      .filter((row) => row[0] === name)
      .map((row) => ({
        day: parseDay(row[1]!)!,
        rainMm: number(row[2]),
        tempMaxC: number(row[3]),
        tempMinC: number(row[4]),
      }));
    const source = 'vega-datasets weather.csv, 2012–2015';
    return { name, source, latitudeDeg, longitudeDeg, elevationM, record: recordFromDays(days).record };
  };
  return [station('Seattle', 47.4, -122.3, 130), station('New York', 40.7, -73.9, 10)];
}

/** The records of a weather-samples folder that serve fits and checks. */
export function readSamples(folder: string): StationRecord[] {
  const at = (file: string) => join(folder, file);
  return [
    station(
      'Adelaide',
      'GHCN-Daily ASN00023000',
      -34.9,
      138.6,
      50,
      ghcnDays(at('ghcnd_ASN00023000_adelaide.dly')),
    ),
    station(
      'Netherlands',
      'GHCN-Daily NLE00100499, rain only',
      52,
      5,
      0,
      ghcnDays(at('ghcnd_NLE00100499_rainonly.dly')),
    ),
    station('Melbourne', 'Bureau of Meteorology 086338', -37.8, 145, 8, bomDays(folder)),
    station('Berlin', 'DWD 00430', 52.6, 13.3, 36, dwdDays(at('dwd_kl_recent_00430_berlin_tegel.txt'))),
    station(
      'Toronto',
      'Environment Canada 6158355',
      43.7,
      -79.4,
      112,
      ecccDays(at('eccc_daily_toronto_city_2015.csv')),
    ),
    station(
      'Florianópolis',
      'INMET A806',
      -27.6,
      -48.6,
      2,
      inmetDays(at('inmet_A806_florianopolis_2018_utf8.csv')),
    ),
    station('Sitka', 'NCEI USW00025333', 57.0, -135.4, 4, sitkaDays(at('ncei_daily_sitka_2018_full.csv'))),
    station(
      'Buenos Aires',
      'NASA POWER grid point',
      -34.8,
      -58.3,
      15,
      powerDays(at('nasa_power_daily_34.8S_58.3W.json')),
    ),
  ];
}

function station(
  name: string,
  source: string,
  latitudeDeg: number,
  longitudeDeg: number,
  elevationM: number,
  days: DayValues[],
): StationRecord {
  return { name, source, latitudeDeg, longitudeDeg, elevationM, ...recordFromDays(days) };
}

/** Fixed width, tenths; a value with a quality flag is left out. */
function ghcnDays(path: string): DayValues[] {
  const fields = { TMIN: 'tempMinC', TMAX: 'tempMaxC', PRCP: 'rainMm' } as const;
  const days = new Map<number, DayValues>();
  for (const line of linesOf(path)) {
    const field = fields[line.slice(17, 21) as keyof typeof fields];
    if (field === undefined) continue;
    for (let of = 0; of < 31; of++) {
      const cell = line.slice(21 + 8 * of, 29 + 8 * of);
      const value = Number(cell.slice(0, 5));
      if (cell.trim() === '' || value === -9999 || cell[6] !== ' ') continue;
      const day = dayNumber(Number(line.slice(11, 15)), Number(line.slice(15, 17)), of + 1);
      const values = days.get(day) ?? { day };
      values[field] = value / 10;
      days.set(day, values);
    }
  }
  return [...days.values()];
}

function bomDays(folder: string): DayValues[] {
  const days = new Map<number, DayValues>();
  const read = (file: string, field: 'rainMm' | 'tempMinC' | 'tempMaxC') => {
    for (const line of linesOf(join(folder, file)).slice(1)) {
      const cells = cellsOf(line);
      // More than one day of accumulation is not a daily value.
      if (cells.length < 7 || cells[5] === '' || Number(cells[6]) > 1) continue;
      const day = dayNumber(Number(cells[2]), Number(cells[3]), Number(cells[4]));
      days.set(day, { ...(days.get(day) ?? { day }), [field]: Number(cells[5]) });
    }
  };
  read('bom_IDCJAC0009_086338_rain.csv', 'rainMm');
  read('bom_IDCJAC0010_086338_tmax.csv', 'tempMaxC');
  read('bom_IDCJAC0011_086338_tmin.csv', 'tempMinC');
  return [...days.values()];
}

function dwdDays(path: string): DayValues[] {
  const value = (cell: string | undefined) => (number(cell) <= -999 ? Number.NaN : number(cell));
  return linesOf(path)
    .slice(1)
    .map((line) => line.split(';').map((cell) => cell.trim()))
    .filter((cells) => cells.length > 17)
    .map((cells) => ({
      day: dayNumber(
        Number(cells[1]!.slice(0, 4)),
        Number(cells[1]!.slice(4, 6)),
        Number(cells[1]!.slice(6)),
      ),
      rainMm: value(cells[6]),
      sunshineHours: value(cells[8]),
      tempMaxC: value(cells[15]),
      tempMinC: value(cells[16]),
    }));
}

function ecccDays(path: string): DayValues[] {
  const lines = linesOf(path);
  const header = cellsOf(lines[0]!);
  const column = (name: string) => header.findIndex((cell) => cell.startsWith(name));
  const [date, max, min, rain] = ['Date/Time', 'Max Temp (', 'Min Temp (', 'Total Precip ('].map(column);
  return lines
    .slice(1)
    .map(cellsOf)
    .filter((cells) => cells.length > 20)
    .map((cells) => ({
      day: parseDay(cells[date!]!)!,
      tempMaxC: number(cells[max!]),
      tempMinC: number(cells[min!]),
      rainMm: number(cells[rain!]),
    }));
}

/** Hourly, UTC stamps at the end of the hour, local time UTC−3. Days with fewer than 24 rows are left out. */
function inmetDays(path: string): DayValues[] {
  const value = (cell: string | undefined) => {
    const read = number(cell?.replace(',', '.'));
    return read === -9999 ? Number.NaN : read;
  };
  const hours = new Map<number, { rain: number; max: number; min: number; solar: number; rows: number }>();
  for (const line of linesOf(path).slice(9)) {
    const cells = line.split(';');
    const utcDay = parseDay(cells[0] ?? '');
    if (utcDay === null) continue;
    const day = Number(cells[1]!.slice(0, 2)) < 4 ? utcDay - 1 : utcDay;
    const sum = hours.get(day) ?? {
      rain: 0,
      max: Number.NEGATIVE_INFINITY,
      min: Number.POSITIVE_INFINITY,
      solar: 0,
      rows: 0,
    };
    sum.rain += value(cells[2]) || 0;
    sum.solar += (value(cells[6]) || 0) / 1000;
    sum.max = Math.max(sum.max, value(cells[9]) || Number.NEGATIVE_INFINITY);
    sum.min = Math.min(sum.min, value(cells[10]) || Number.POSITIVE_INFINITY);
    sum.rows++;
    hours.set(day, sum);
  }
  return [...hours]
    .filter(([, sum]) => sum.rows === 24 && Number.isFinite(sum.max))
    .map(([day, sum]) => ({
      day,
      rainMm: sum.rain,
      tempMaxC: sum.max,
      tempMinC: sum.min,
      solarMJ: sum.solar,
    }));
}

/** °F and inches; one minimum of 1 °F between 33 and 39 is an error of the file and left out. */
function sitkaDays(path: string): DayValues[] {
  const lines = linesOf(path);
  const header = cellsOf(lines[0]!);
  const [date, rain, max, min] = ['DATE', 'PRCP', 'TMAX', 'TMIN'].map((name) => header.indexOf(name));
  return lines
    .slice(1)
    .map((line) =>
      (line.match(/("[^"]*"|[^,]*)(,|$)/g) ?? []).map((cell) => cell.replace(/,$/, '').replaceAll('"', '')),
    )
    .filter((cells) => cells.length > min! && number(cells[min!]) !== 1)
    .map((cells) => ({
      day: parseDay(cells[date!]!)!,
      rainMm: number(cells[rain!]) * 25.4,
      tempMaxC: (number(cells[max!]) - 32) / 1.8,
      tempMinC: (number(cells[min!]) - 32) / 1.8,
    }));
}

function powerDays(path: string): DayValues[] {
  const data = JSON.parse(readFileSync(path, 'utf8')).properties.parameter as Record<
    string,
    Record<string, number>
  >;
  return Object.entries(data.T2M_MIN!)
    .filter(([, value]) => value > -900)
    .map(([date, value]) => ({
      day: dayNumber(Number(date.slice(0, 4)), Number(date.slice(4, 6)), Number(date.slice(6))),
      tempMinC: value,
      tempMaxC: data.T2M_MAX![date]!,
    }));
}
