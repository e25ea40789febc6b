import type { AtlasPointRow } from './atlas-point.ts';
import type { AtlasSettings } from './settings.ts';
import { csvWriter } from './write-csv.ts';
import { geojsonWriter } from './write-geojson.ts';

/** A form of a map. */
export type AtlasWriter = {
  /** Its text, piece by piece. @param tiles the points of each tile, in the order of the grid */
  texts: (settings: AtlasSettings, tiles: Iterable<AtlasPointRow[]>) => Iterable<string>;
};

/** Forms of a map by the ending of its file. */
const writers: Readonly<Record<string, AtlasWriter>> = {
  '.geojson': geojsonWriter,
  '.json': geojsonWriter,
  '.csv': csvWriter,
};

export const mapEndings = Object.keys(writers);

/** The form that a file's ending asks for; undefined: none that is known. */
export function writerFor(path: string): AtlasWriter | undefined {
  const ending = /\.\w+$/.exec(path)?.[0].toLowerCase() ?? '';
  return Object.hasOwn(writers, ending) ? writers[ending] : undefined;
}
