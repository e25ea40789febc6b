import type { FoundFile, WeatherReading } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { shortName } from '../files/weather-texts.ts';

/** What was taken for granted in reading files: the foot of the answer, and `assumed` in its document. */
export function readingGrounds({ files, typicalYear }: WeatherReading, { say }: Speaker): string[] {
  const isOfReadings = files.some(({ columns }) =>
    columns.some(({ as }) => as === 'time' || as === 'hour' || as === 'tempC'),
  );
  return [
    say('record.how.content'),
    ...files.flatMap((file) => fileGrounds(file, say)),
    ...(isOfReadings ? [say('record.how.readings')] : []),
    say(typicalYear ? 'record.how.typical' : 'record.how.gaps'),
    say('record.how.correct'),
  ];
}

function fileGrounds(
  { file: path, encoding, timeBase, dateOrder, format }: FoundFile,
  say: Speaker['say'],
): string[] {
  const file = shortName(path);
  return [
    ...(encoding === 'utf-8' ? [] : [say('record.how.encoding', { file, encoding })]),
    ...(dateOrder === null ? [] : [say('record.how.dates', { file, order: dateOrder })]),
    say('record.how.time', { file, time: timeBase === 'local-standard' ? 'standard' : timeBase }),
    ...(format === 'gsod-fixed' || format === 'gsod-table' ? [say('record.how.gsod')] : []),
  ];
}
