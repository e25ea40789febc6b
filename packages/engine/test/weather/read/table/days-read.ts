import { formatDay } from '../../../../src/calendar/index.ts';
import {
  type FoundFile,
  noCorrections,
  type WeatherCorrections,
  type WeatherIssue,
} from '../../../../src/weather/read/found.ts';
import { tableReaders } from '../../../../src/weather/read/table/readers.ts';

/** Reads a table by the first reader that knows it. */
export function readText(
  text: string,
  corrections: Partial<WeatherCorrections> = {},
  utcOffsetH: number | null = null,
): { ok: true; found: FoundFile } | { ok: false; issue: WeatherIssue } {
  const reader = tableReaders.find(({ knows }) => knows(text));
  if (reader === undefined) throw new Error('no reader knows the text');
  return reader.read(
    { file: 'table.csv', text, encoding: 'utf-8' },
    { ...noCorrections, ...corrections },
    { utcOffsetH },
  );
}

export function foundIn(...given: Parameters<typeof readText>): FoundFile {
  const reading = readText(...given);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issue));
  return reading.found;
}

/** Days as `date min/max/rain`, with the sun behind where it is known; `-` for what is not. */
export function daysRead(...given: Parameters<typeof readText>): string[] {
  const { record } = foundIn(...given);
  return Array.from({ length: record.days }, (_, at) => {
    const value = (field: 'tempMinC' | 'tempMaxC' | 'rainMm' | 'solarMJ') =>
      record.known[field][at] === 1 ? String(Math.round(record[field][at]! * 100) / 100 + 0) : '-';
    const sun = record.known.solarMJ[at] === 1 ? `/${value('solarMJ')}` : '';
    return `${formatDay(record.firstDay + at)} ${value('tempMinC')}/${value('tempMaxC')}/${value('rainMm')}${sun}`;
  });
}

/** Rows of the hours of a day, 0…23. */
export function hours(row: (hour: number) => string): string {
  return Array.from({ length: 24 }, (_, hour) => row(hour)).join('\n');
}

export const two = (number: number) => String(number).padStart(2, '0');
