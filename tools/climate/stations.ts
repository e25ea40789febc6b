import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import {
  type ClimateField,
  type Position,
  type Sites,
  sitesAt,
} from '../../packages/engine/src/climate/index.ts';

export type Stations = Sites & {
  latitudeDeg: Float64Array;
  longitudeDeg: Float64Array;
  /** Twelve values a station, station by station. */
  values: Record<ClimateField, Float64Array>;
};

const columnStems: Record<ClimateField, string> = {
  tempMeanC: 'tmean_c',
  tempRangeC: 'trange_c',
  rainMm: 'precip_mm',
  wetDays: 'wetdays',
  relativeHumidityPct: 'rh_pct',
  sunshinePct: 'sun_pct',
  wind10mMs: 'wind_ms',
  frostNights: 'frostdays',
};

/** Reads the table of station normals (CSV, gzipped or not). Throws an Error naming the line or column that is wrong. */
export function readStations(path: string): Stations {
  const bytes = readFileSync(path);
  const text = (bytes[0] === 0x1f && bytes[1] === 0x8b ? gunzipSync(bytes) : bytes).toString('utf8');
  const lines = text.trimEnd().split(/\r?\n/);
  const header = lines[0].split(',');
  const rows = lines.slice(1).map((line, i) => {
    const row = line.split(',').map((cell) => (cell.trim() === '' ? Number.NaN : Number(cell)));
    const bad = row.length === header.length ? row.findIndex((value) => !Number.isFinite(value)) : row.length;
    if (bad >= 0)
      throw new Error(
        `${path}, line ${i + 2}: expected ${header.length} numbers, column ${bad + 1} (${header[bad]}) has none`,
      );
    return row;
  });
  const column = (name: string) => {
    const index = header.indexOf(name);
    if (index < 0)
      throw new Error(`${path}: no column ${name}; expected the columns of a table of monthly normals`);
    return Float64Array.from(rows, (row) => row[index]);
  };
  const months = (stem: string) => {
    const columns = Array.from({ length: 12 }, (_, m) => column(`${stem}_${String(m + 1).padStart(2, '0')}`));
    return Float64Array.from({ length: rows.length * 12 }, (_, i) => columns[i % 12][Math.floor(i / 12)]);
  };
  const latitudeDeg = column('lat');
  const longitudeDeg = column('lon');
  const values = {} as Stations['values'];
  for (const field of Object.keys(columnStems) as ClimateField[]) values[field] = months(columnStems[field]);
  return { ...sitesAt(latitudeDeg, longitudeDeg, column('elev_m')), latitudeDeg, longitudeDeg, values };
}

/** The stations at `rows`, in that order. */
export function pickStations(all: Stations, rows: readonly number[]): Stations {
  const take = (values: Float64Array) => Float64Array.from(rows, (row) => values[row]);
  const values = {} as Stations['values'];
  for (const field of Object.keys(columnStems) as ClimateField[]) {
    values[field] = Float64Array.from(
      { length: rows.length * 12 },
      (_, i) => all.values[field][rows[Math.floor(i / 12)] * 12 + (i % 12)],
    );
  }
  const latitudeDeg = take(all.latitudeDeg);
  const longitudeDeg = take(all.longitudeDeg);
  return { ...sitesAt(latitudeDeg, longitudeDeg, take(all.elevationM)), latitudeDeg, longitudeDeg, values };
}

/** Where one of the sites lies. */
export function siteOf(sites: Sites, i: number): Position {
  return { xKm: sites.xKm[i], yKm: sites.yKm[i], zKm: sites.zKm[i], elevationM: sites.elevationM[i] };
}
