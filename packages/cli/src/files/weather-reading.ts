import {
  type ReadingPlace,
  readWeather,
  type WeatherCorrections,
  type WeatherIssue,
  type WeatherReading,
  type WeatherText,
} from '@neckfall/engine';
import { refuse } from '../refusal/refusal.ts';
import { type Named, namedFile } from './weather-texts.ts';

/** A cell or header quoted in a message is cut here. */
const longestQuote = 60;

/** Texts read as one record, or the refusal of the file at fault with exit code 3. */
export function readingOf(
  texts: readonly WeatherText[],
  corrections: WeatherCorrections,
  place: ReadingPlace,
  option: string | null,
): WeatherReading {
  const result = readWeather(texts, corrections, place);
  if (result.ok) return result.reading;
  throw refusedFile(namedFile(result.file, option), result.issue);
}

function refusedFile(
  { field, value }: Named,
  { line, field: column, received, expected, more = 0 }: WeatherIssue,
) {
  return refuse('weather-refused', {
    field,
    exit: 3,
    expected,
    values: {
      value,
      line: line === null ? 'none' : String(line),
      column: column === '' ? 'none' : quoted(column),
      received: quoted(received),
      more,
    },
  });
}

function quoted(text: string): string {
  return text.length > longestQuote ? `${text.slice(0, longestQuote)}…` : text;
}
