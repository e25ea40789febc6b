import { greatCircleKm } from '@neckfall/data';
import type { FoundFile, WeatherReading } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { namedFile } from '../files/weather-texts.ts';

/** Files of one record come from stations no further apart, km (ours: a station that was moved within a town). */
const oneStationKm = 20;

/** What is to be known of files before they are believed. @param option that named the files; null: none */
export function readingWarnings(
  { files, overlaps }: WeatherReading,
  option: string | null,
  { say, all }: Speaker,
): string[] {
  const named = (file: string) => namedFile(file, option).value;
  const far = files.find((file) => isFar(files[0], file));
  return [
    ...files.flatMap(({ file, missingCodes }) =>
      missingCodes.map(({ column, code, days }) =>
        say('record.missing-code', { file: named(file), column, code: String(code), days }),
      ),
    ),
    ...files.flatMap(({ file, otherStations }) =>
      otherStations.length === 0
        ? []
        : [
            say('record.other-stations', {
              file: named(file),
              count: otherStations.length,
              names: shortList(otherStations, all),
            }),
          ],
    ),
    ...overlaps.map(({ file, days, differing }) =>
      say('record.overlap', { file: named(file), days, differing }),
    ),
    ...(far === undefined ? [] : [say('record.far-apart', { file: named(far.file), first: files[0].file })]),
  ];
}

const mostNames = 5;

function shortList(names: readonly string[], all: Speaker['all']): string {
  return names.length <= mostNames ? all(names) : `${names.slice(0, mostNames).join(', ')}, …`;
}

function isFar({ station: a }: FoundFile, { station: b }: FoundFile): boolean {
  if (a?.latitudeDeg == null || a.longitudeDeg == null || b?.latitudeDeg == null || b.longitudeDeg == null) {
    return a?.name != null && b?.name != null && a.name !== b.name;
  }
  return greatCircleKm(a.latitudeDeg, a.longitudeDeg, b.latitudeDeg, b.longitudeDeg) > oneStationKm;
}
