import { shown } from '@neckfall/words';
import { type RawAtlas, readShows } from '../options/atlas-options.ts';
import { outputForm, type RawOutputOptions } from '../options/place-options.ts';
import { readersSpeaker, speakerFor } from '../options/speaker-for.ts';
import { openSink } from '../output/open-sink.ts';
import { refuse } from '../refusal/refusal.ts';
import { atlasText } from './atlas-text.ts';
import type { Part } from './part-file.ts';
import { rowsOfPart } from './rows-of-part.ts';
import { csvWriter } from './write-csv.ts';
import { geojsonWriter } from './write-geojson.ts';
import { type AtlasWriter, mapEndings, writerFor } from './writers.ts';

/** How a map is given, told before it is worked out. @throws Refusal of a file whose ending says no form */
export function readMapForm(raw: RawAtlas): AtlasWriter {
  const form = outputForm(raw);
  const shows = readShows(raw, readersSpeaker(raw));
  if (form === 'json') return geojsonWriter;
  if (form === 'csv') return csvWriter;
  const speaker = speakerFor(raw);
  if (raw.out === undefined) {
    return {
      *texts(settings, tiles) {
        const lines = atlasText(settings, [...tiles].flat(), speaker).split('\n');
        yield lines.map((line) => shown(line)).join('\n');
      },
    };
  }
  const writer = writerFor(raw.out, shows, speaker);
  if (!writer) {
    const expected = speaker.any(mapEndings);
    throw refuse('map-ending', { field: '--out', values: { value: raw.out }, expected });
  }
  return writer;
}

/** Prints a map, or writes its file whole. */
export async function deliverMap(part: Part, form: AtlasWriter, { out }: RawOutputOptions): Promise<void> {
  const sink = await openSink(out);
  try {
    for (const text of form.texts(part.settings, rowsOfPart(part))) if (!(await sink.write(text))) break;
    sink.keep();
  } finally {
    // without effect on what has been kept
    sink.drop();
  }
}
