import { type WeatherText, weatherBytes, weatherFormatOf } from '@neckfall/engine';
import { textOf } from './text-of.ts';
import { gunzipped, packedAs, type Unpacked, unzipped } from './unpack.ts';

/** What a file's bytes hold: one text, or the tables of weather of an archive. */
export type OpenedWeather =
  | { ok: true; texts: WeatherText[] }
  | { ok: false; reason: 'too-big' | 'damaged' | 'too-many-files' | 'no-text' };

/**
 * The text in the bytes of a file, unpacked where its content is gzip or zip, in UTF-8, UTF-16 where a mark says so,
 * else Windows-1252. Runs in Node and in browsers.
 *
 * @param name of the file, as it is told back
 */
export function openWeatherFile(name: string, bytes: Uint8Array): OpenedWeather {
  if (bytes.length > weatherBytes) return { ok: false, reason: 'too-big' };
  const unpacked = unpack(name, bytes);
  if (!unpacked.ok) return unpacked;
  const isArchive = packedAs(bytes) === 'zip';
  const texts = unpacked.files.flatMap((file) => {
    const text = textOf(file.bytes);
    return text === null ? [] : [{ file: isArchive ? `${name}/${file.name}` : name, ...text }];
  });
  if (texts.length === 0) return { ok: false, reason: 'no-text' };
  return { ok: true, texts: isArchive ? tablesOf(texts) : texts };
}

function unpack(name: string, bytes: Uint8Array): Unpacked {
  const packed = packedAs(bytes);
  if (packed === 'gzip') return gunzipped(bytes, name, weatherBytes);
  if (packed === 'zip') return unzipped(bytes, weatherBytes);
  return { ok: true, files: [{ name, bytes }] };
}

/** Of an archive: files of a service, else other tables, else all, so that what is wrong with them is told. */
function tablesOf(texts: WeatherText[]): WeatherText[] {
  const formats = texts.map(({ text }) => weatherFormatOf(text));
  const ofService = texts.filter((_, at) => formats[at] !== null && formats[at] !== 'own-table');
  if (ofService.length > 0) return ofService;
  const tables = texts.filter((_, at) => formats[at] !== null);
  return tables.length > 0 ? tables : texts;
}
