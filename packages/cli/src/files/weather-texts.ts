import { basename } from 'node:path';
import { type OpenedWeather, openWeatherFile } from '@neckfall/data';
import { type WeatherText, weatherBytes } from '@neckfall/engine';
import { refuse } from '../refusal/refusal.ts';
import { readBounded } from './read-bounded.ts';

/** How a file is spoken of: by its option where it has one. */
export type Named = { field: string; value: string };

export function namedFile(path: string, option: string | null): Named {
  return option === null ? { field: '', value: path } : { field: option, value: `${option} ${path}` };
}

/** The texts in a file of weather, or its refusal with exit code 3. */
export function readWeatherTexts(path: string, { field, value }: Named): WeatherText[] {
  let bytes: Buffer | null;
  try {
    bytes = readBounded(path, weatherBytes);
  } catch (cause) {
    const { code = 'unknown' } = cause as NodeJS.ErrnoException;
    const refusal = code === 'ENOENT' ? 'weather-missing' : 'weather-unreadable';
    throw refuse(refusal, { field, exit: 3, values: { value, reason: code }, cause });
  }
  const opened: OpenedWeather =
    bytes === null ? { ok: false, reason: 'too-big' } : openWeatherFile(path, bytes);
  if (opened.ok) return opened.texts;
  throw refuse(`weather-${opened.reason}`, { field, exit: 3, values: { value, limit: weatherBytes / 1e6 } });
}

/** What a file is called where it was just named in full. */
export function shortName(file: string): string {
  return basename(file) || file;
}
