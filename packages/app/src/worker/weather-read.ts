import { greatCircleKm, openWeatherFile } from '@neckfall/data';
import {
  checkWeather,
  readWeather,
  type WeatherCheck,
  type WeatherCorrections,
  type WeatherIssue,
  type WeatherReading,
  type WeatherText,
  weatherBytes,
} from '@neckfall/engine';
import type { Work } from './protocol.ts';

export type WeatherPoint = { latitudeDeg: number; longitudeDeg: number };

export type WeatherReadAsked = {
  /** Read here, so that the page stays free. */
  files: readonly File[];
  corrections: WeatherCorrections;
  place: WeatherPoint & { utcOffsetH: number };
};

/** What files were found to be, and what is doubtful in them. */
export type WeatherFound = WeatherReading & {
  check: WeatherCheck;
  /** From the place to the station of each file, km; null where it does not say where it stands. */
  awayKm: (number | null)[];
};

/** Why a file is refused: before its text is looked at, or for what it says. */
export type FileRefusal =
  | { file: string; code: 'too-big'; limitMb: number }
  | { file: string; code: 'damaged' | 'too-many-files' | 'no-text' | 'unreadable' }
  | ({ file: string } & WeatherIssue);

export type WeatherReadReply = { ok: true; found: WeatherFound } | { ok: false; refusal: FileRefusal };

/** Reads files of weather as one record; nothing of them is taken where one is refused. Tells the file it is at. */
export async function weatherRead(
  { files, corrections, place }: WeatherReadAsked,
  work: Work<{ file: string }>,
): Promise<WeatherReadReply> {
  const texts: WeatherText[] = [];
  const refuse = (refusal: FileRefusal): WeatherReadReply => ({ ok: false, refusal });
  for (const file of files) {
    work.part({ file: file.name });
    await work.pause();
    // before it takes room
    if (file.size > weatherBytes) return refuse({ file: file.name, ...tooBig });
    const bytes = await file.arrayBuffer().catch(() => null);
    if (bytes === null) return refuse({ file: file.name, code: 'unreadable' });
    const opened = openWeatherFile(file.name, new Uint8Array(bytes));
    if (!opened.ok) {
      const { reason } = opened;
      return refuse({ file: file.name, ...(reason === 'too-big' ? tooBig : { code: reason }) });
    }
    texts.push(...opened.texts);
  }
  await work.pause();
  const result = readWeather(texts, corrections, place);
  if (!result.ok) return refuse({ file: result.file, ...result.issue });
  return { ok: true, found: foundAt(result.reading, place) };
}

const tooBig = { code: 'too-big', limitMb: weatherBytes / 1e6 } as const;

/** A reading held against the place it is meant for. */
export function foundAt(reading: WeatherReading, place: WeatherPoint): WeatherFound {
  return {
    ...reading,
    check: checkWeather(reading.record, place.latitudeDeg),
    awayKm: reading.files.map(({ station }) =>
      station?.latitudeDeg == null || station.longitudeDeg === null
        ? null
        : greatCircleKm(place.latitudeDeg, place.longitudeDeg, station.latitudeDeg, station.longitudeDeg),
    ),
  };
}
