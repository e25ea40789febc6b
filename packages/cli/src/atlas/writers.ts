import type { MapShows } from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import type { AtlasPointRow } from './atlas-point.ts';
import type { AtlasSettings } from './settings.ts';
import { csvWriter } from './write-csv.ts';
import { geojsonWriter } from './write-geojson.ts';
import { svgWriter } from './write-svg.ts';

/** A form of a map. */
export type AtlasWriter = {
  /** Its text, piece by piece. @param tiles the points of each tile, in the order of the grid */
  texts: (settings: AtlasSettings, tiles: Iterable<AtlasPointRow[]>) => Iterable<string>;
};

/** Endings of files that hold a map. */
export const mapEndings = ['.geojson', '.json', '.csv', '.svg'] as const;

/** The form that a file's ending asks for; null: none that is known. */
export function writerFor(path: string, shows: MapShows, speaker: Speaker): AtlasWriter | null {
  const ending = mapEndings.find((known) => path.toLowerCase().endsWith(known));
  switch (ending) {
    case '.geojson':
    case '.json':
      return geojsonWriter;
    case '.csv':
      return csvWriter;
    case '.svg':
      return svgWriter(shows, speaker);
    case undefined:
      return null;
  }
}
