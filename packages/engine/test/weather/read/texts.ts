import { formatDay, noCorrections, readWeather, type WeatherCorrections } from '../../../src/index.ts';

/** A text read alone, of a place of which nothing is known. */
function readText(text: string, corrections: Partial<WeatherCorrections> = {}) {
  return readWeather(
    [{ file: 'a', text, encoding: 'utf-8' }],
    { ...noCorrections, ...corrections },
    { utcOffsetH: null },
  );
}

/** What a text was found to be; fails where it is refused. */
export function foundIn(text: string, corrections: Partial<WeatherCorrections> = {}) {
  const result = readText(text, corrections);
  if (!result.ok) throw new Error(JSON.stringify(result.issue));
  const [found] = result.reading.files;
  const { record } = result.reading;
  const days = Array.from({ length: record.days }, (_, at) => {
    const value = (field: 'tempMaxC' | 'tempMinC' | 'rainMm' | 'solarMJ') =>
      record.known[field][at] === 1 ? Math.round(record[field][at]! * 1000) / 1000 : null;
    return [formatDay(record.firstDay + at), value('tempMaxC'), value('tempMinC'), value('rainMm')] as const;
  });
  return { ...result.reading, found: found!, days };
}

export function issueIn(text: string, corrections: Partial<WeatherCorrections> = {}) {
  const result = readText(text, corrections);
  return result.ok ? null : result.issue;
}
