import { usualSite } from '@neckfall/data';
import { readWeatherFiles, type WeatherFile } from '../files/weather-file.ts';
import { refuse } from '../refusal/refusal.ts';
import { today as machineToday } from '../values/clock.ts';
import { parseToday } from '../values/date.ts';
import { parseNumber } from '../values/number.ts';
import { type Point, parsePoint } from '../values/point.ts';

/** Options of every command that answers for a place, as commander gives them. */
export type RawPlaceOptions = {
  at?: string;
  sun?: string;
  warmer?: string;
  weather?: string[];
  years?: string;
  seed?: string;
  today?: string;
};

export type PlaceOptions = {
  /** A town's name or a point. */
  asked: { town: string } | { at: string; point: Point };
  /** Direct sun at midsummer, h; null: open. */
  sunHours: number | null;
  /** Warming offset, °C; null: the default. */
  warmerC: number | null;
  /** Measured days in place of made-up ones. */
  weather: WeatherFile | null;
  years: number;
  seed: number;
  /** Day number. */
  today: number;
};

export type Setting = Omit<PlaceOptions, 'asked'>;

export function readPlaceOptions(town: string | undefined, raw: RawPlaceOptions): PlaceOptions {
  return { asked: askedPlace(town, raw.at), ...readSetting(raw) };
}

/** All but the place itself. */
export function readSetting(raw: RawPlaceOptions): Setting {
  const number = (text: string | undefined, rule: Parameters<typeof parseNumber>[1]) =>
    text === undefined ? null : parseNumber(text, rule);
  return {
    sunHours: readSun(raw.sun),
    warmerC: number(raw.warmer, { field: '--warmer', min: -5, max: 10, unit: '°C' }),
    weather: raw.weather === undefined ? null : readWeatherFiles(raw.weather),
    years: number(raw.years, { field: '--years', min: 1, max: 200, whole: true }) ?? usualSite.years,
    seed: number(raw.seed, { field: '--seed', min: 0, max: 2 ** 31 - 1, whole: true }) ?? usualSite.seed,
    today: raw.today === undefined ? machineToday() : parseToday(raw.today),
  };
}

export function readSun(text: string | undefined): number | null {
  return text === undefined ? null : parseNumber(text, { field: '--sun', min: 0, max: 24, unit: 'h' });
}

function askedPlace(town: string | undefined, at: string | undefined): PlaceOptions['asked'] {
  if (at === undefined) {
    if (town === undefined || town.trim() === '') throw refuse('no-place');
    return { town };
  }
  if (town !== undefined) throw refuse('two-places', { field: '--at', values: { value: town, at } });
  return { at, point: parsePoint(at) };
}

/** Of the commands that answer for many places at once. */
export type RawBatchOption = { batch?: string };

/** How an answer is given. */
export type RawOutputOptions = {
  json?: boolean;
  csv?: boolean;
  out?: string;
  units?: string;
  lang?: string;
  debug?: boolean;
};

export type OutputForm = 'text' | 'json' | 'csv';

export function outputForm(raw: RawOutputOptions): OutputForm {
  if (raw.json && raw.csv) throw refuse('json-and-csv', { field: '--json' });
  return raw.json ? 'json' : raw.csv ? 'csv' : 'text';
}
