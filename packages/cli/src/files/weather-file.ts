import {
  type DailyCsvIssue,
  type DailyRecord,
  type MissingCode,
  readDailyCsv,
  weatherBytes,
} from '@neckfall/engine';
import { refuse } from '../refusal/refusal.ts';
import { readBounded } from './read-bounded.ts';

/** A daily record as the grower gave it. */
export type WeatherFile = { path: string; record: DailyRecord; missingCodes: readonly MissingCode[] };

const field = '--weather';
/** A cell or header quoted in a message is cut here. */
const longestQuote = 60;

/** Reads the file of `--weather`, or refuses it with exit code 3. */
export function readWeatherFile(path: string): WeatherFile {
  const result = readDailyCsv(textOf(path));
  if (!result.ok) throw refusedFile(path, result.issues);
  return { path, record: result.record, missingCodes: result.missingCodes };
}

function textOf(path: string): string {
  let bytes: Buffer | null;
  try {
    bytes = readBounded(path, weatherBytes);
  } catch (cause) {
    const { code = 'unknown' } = cause as NodeJS.ErrnoException;
    const values = { value: path, reason: code };
    throw refuse(code === 'ENOENT' ? 'weather-missing' : 'weather-unreadable', {
      field,
      exit: 3,
      values,
      cause,
    });
  }
  if (bytes === null) {
    throw refuse('weather-too-big', { field, exit: 3, values: { value: path, limit: weatherBytes / 1e6 } });
  }
  try {
    return new TextDecoder(encodingOf(bytes), { fatal: true }).decode(bytes);
  } catch (cause) {
    throw refuse('weather-encoding', { field, exit: 3, values: { value: path }, cause });
  }
}

/** UTF-8, or UTF-16 by its byte order mark. */
function encodingOf(bytes: Buffer): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : 'utf-8';
}

function refusedFile(path: string, issues: readonly DailyCsvIssue[]) {
  const { line, field: column, received, expected } = issues[0];
  return refuse('weather-refused', {
    field,
    exit: 3,
    expected,
    values: {
      value: path,
      line: String(line),
      column: column === '' ? 'none' : quoted(column),
      received: quoted(received),
      more: issues.length - 1,
    },
  });
}

function quoted(text: string): string {
  return text.length > longestQuote ? `${text.slice(0, longestQuote)}…` : text;
}
