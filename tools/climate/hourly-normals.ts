import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Seattle–Tacoma airport. Memory: position and elevation of the station; the file itself names no station. */
export const hourlyNormalsSite = { latitudeDeg: 47.45, longitudeDeg: -122.31, elevationM: 130 };

const path = fileURLToPath(
  new URL('../../node_modules/vega-datasets/data/seattle-weather-hourly-normals.csv', import.meta.url),
);

export type HourlyNormals = {
  /** Mean of all hours of each month, °C. */
  tempMeanC: Float64Array;
  /** Warmest minus coldest hour of the day, mean over each month, °C: below the range of daily extremes. */
  hourlyRangeC: Float64Array;
  /** Mean wind of each month, m/s as the file has it. */
  windMs: Float64Array;
};

/** Hourly normals 1981–2010 of Seattle from vega-datasets (columns date, pressure, temperature in °C, wind). */
export function readHourlyNormals(): HourlyNormals {
  const days = new Map<string, { month: number; hours: number[]; wind: number[] }>();
  for (const line of readFileSync(path, 'utf8').trimEnd().split('\n').slice(1)) {
    const [date = '', , temperature, wind] = line.split(',');
    const key = date.slice(0, 10);
    const day = days.get(key) ?? { month: Number(date.slice(5, 7)) - 1, hours: [], wind: [] };
    day.hours.push(Number(temperature));
    day.wind.push(Number(wind));
    days.set(key, day);
  }
  const average = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const byMonth = (of: (day: { hours: number[]; wind: number[] }) => number) =>
    Float64Array.from({ length: 12 }, (_, month) =>
      average([...days.values()].filter((day) => day.month === month && day.hours.length > 20).map(of)),
    );
  return {
    tempMeanC: byMonth((day) => average(day.hours)),
    hourlyRangeC: byMonth((day) => Math.max(...day.hours) - Math.min(...day.hours)),
    windMs: byMonth((day) => average(day.wind)),
  };
}
