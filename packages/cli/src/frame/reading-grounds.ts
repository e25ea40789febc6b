import type { FoundFile, WeatherReading } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { shortName } from '../files/weather-texts.ts';

/** What was taken for granted in reading files: the foot of the answer, and `assumed` in its document. */
export function readingGrounds({ files, typicalYear }: WeatherReading, speaker: Speaker): string[] {
  const { say } = speaker;
  const isOfReadings = files.some(({ columns }) => columns.some(({ as }) => as === 'time' || as === 'tempC'));
  const isGsod = files.some(({ format }) => format === 'gsod-fixed' || format === 'gsod-table');
  return [
    say('record.how.content'),
    ...sameOf(files, speaker, ({ encoding }, file) =>
      encoding === 'utf-8' ? null : say('record.how.encoding', { file, encoding }),
    ),
    ...sameOf(files, speaker, ({ dateOrder }, file) =>
      dateOrder === null ? null : say('record.how.dates', { file, order: dateOrder }),
    ),
    ...sameOf(files, speaker, ({ timeBase }, file) =>
      say('record.how.time', { file, time: timeBase === 'local-standard' ? 'standard' : timeBase }),
    ),
    ...sameOf(files, speaker, ({ utcOffset }, file) =>
      utcOffset == null
        ? null
        : say('record.how.offset', {
            file,
            hours: speaker.number(utcOffset.offsetH, 2),
            from: utcOffset.from,
          }),
    ),
    ...(isGsod ? [say('record.how.gsod')] : []),
    ...(isOfReadings ? [say('record.how.readings')] : []),
    say(typicalYear ? 'record.how.typical' : 'record.how.gaps'),
    say('record.how.correct'),
  ];
}

/** A sentence on each file; files of which the same is to be said share one. */
function sameOf(
  files: readonly FoundFile[],
  { all }: Speaker,
  sentence: (file: FoundFile, named: string) => string | null,
): string[] {
  const groups = new Map<string, FoundFile[]>();
  for (const file of files) {
    const said = sentence(file, '');
    if (said !== null) groups.set(said, [...(groups.get(said) ?? []), file]);
  }
  return [...groups.values()].map((alike) =>
    String(sentence(alike[0], all(alike.map(({ file }) => shortName(file))))),
  );
}
