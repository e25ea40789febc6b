import { type ClimateField, climateFields } from '../../packages/engine/src/climate/index.ts';
import { quantileSorted } from '../../packages/engine/src/math/index.ts';
import { type LeaveOut, leaveOutGroups } from './leave-out.ts';
import type { Stations } from './stations.ts';

const labels: Record<ClimateField, [name: string, digits: number]> = {
  tempMeanC: ['mean temperature, °C', 2],
  tempRangeC: ['daily range, °C', 2],
  rainMm: ['rain, mm a month', 1],
  wetDays: ['wet days a month', 2],
  relativeHumidityPct: ['relative humidity, %', 2],
  sunshinePct: ['sunshine, % of possible', 2],
  wind10mMs: ['wind at 10 m, m/s', 3],
  frostNights: ['frost nights a month', 2],
};

/** Markdown rows of errors by field, the ways of leaving out side by side. */
export function errorTable(ways: LeaveOut[]): string[] {
  const names = ways.map((way) => (way.blockDeg === null ? 'single stations' : `blocks of ${way.blockDeg}°`));
  return [
    `| field | ${names.join(' | ')} |`,
    `| --- |${' --- |'.repeat(ways.length)}`,
    ...climateFields.map((field) =>
      row(
        labels[field][0],
        ways.map((way) => way.errors[field]),
        labels[field][1],
      ),
    ),
    row(
      '*naive way: mean temperature, °C*',
      ways.map((way) => way.naiveTempErrors),
      2,
    ),
    `| *stations scored* | ${ways.map((way) => `${way.rows.length} (${way.groups} of ${leaveOutGroups} groups)`).join(' | ')} |`,
  ];
}

function row(name: string, errors: Float64Array[], digits: number): string {
  return `| ${name} | ${errors.map((e) => figures(e, digits)).join(' | ')} |`;
}

function figures(errors: Float64Array, digits: number): string {
  const size = errors.map(Math.abs).sort();
  return [rootMeanSquare(errors), quantileSorted(size, 0.5), quantileSorted(size, 0.95)]
    .map((value) => value.toFixed(digits))
    .join(' · ');
}

function rootMeanSquare(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i] * values[i];
  return Math.sqrt(sum / values.length);
}

/** Mean temperature by how high the station lies: where the root mean square comes from. */
export function elevationTable(stations: Stations, way: LeaveOut): string[] {
  const limits = [-500, 500, 1000, 2000, 3000, 9000];
  return [
    '| station elevation, m | stations | mean temperature, °C |',
    '| --- | --- | --- |',
    ...limits.slice(1).map((high, band) => {
      const at = way.rows.flatMap((row, i) =>
        stations.elevationM[row] >= limits[band] && stations.elevationM[row] < high ? [i] : [],
      );
      const errors = Float64Array.from(
        at.flatMap((i) => [...way.errors.tempMeanC.subarray(i * 12, i * 12 + 12)]),
      );
      return `| ${band === 0 ? `below ${high}` : `${limits[band]}–${high}`} | ${at.length} | ${figures(errors, 2)} |`;
    }),
  ];
}

/** The stations with the largest errors of the yearly mean temperature, to whole degrees and hundreds of metres. */
export function worstTable(stations: Stations, way: LeaveOut, count: number): string[] {
  const yearly = way.rows.map((row, i) => {
    let sum = 0;
    for (let m = 0; m < 12; m++) sum += way.errors.tempMeanC[i * 12 + m];
    return { row, error: sum / 12 };
  });
  yearly.sort((a, b) => Math.abs(b.error) - Math.abs(a.error));
  return [
    '| near | elevation, m | fitted minus station, °C |',
    '| --- | --- | --- |',
    ...yearly.slice(0, count).map(({ row, error }) => {
      const latitude = Math.round(stations.latitudeDeg[row]);
      const longitude = Math.round(stations.longitudeDeg[row]);
      const place = `${Math.abs(latitude)}° ${latitude < 0 ? 'S' : 'N'}, ${Math.abs(longitude)}° ${longitude < 0 ? 'W' : 'E'}`;
      return `| ${place} | ${Math.round(stations.elevationM[row] / 100) * 100} | ${signed(error)} |`;
    }),
  ];
}

export function signed(value: number): string {
  return `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)}`;
}
