import { formatDay } from '@neckfall/engine';
import { speaker } from '@neckfall/words';
import type { AtlasDocument } from '../documents/atlas-schema.ts';
import { version } from '../version.ts';
import { atlasGrounds } from './atlas-grounds.ts';
import type { AtlasPointRow } from './atlas-point.ts';
import type { AtlasSettings } from './settings.ts';
import type { AtlasWriter } from './writers.ts';

/** The map as GeoJSON (RFC 7946): what it is of, then a point a line. English and metric, as all documents are. */
export const geojsonWriter: AtlasWriter = {
  *texts(settings, tiles) {
    const head = JSON.stringify(headOf(settings));
    yield `${head.slice(0, -1)},"features":[`;
    let comma = '';
    for (const points of tiles) {
      let text = '';
      for (const point of points) {
        text += `${comma}\n${JSON.stringify(featureOf(point))}`;
        comma = ',';
      }
      yield text;
    }
    yield '\n]}\n';
  },
};

function headOf(settings: AtlasSettings): Omit<AtlasDocument, 'features'> {
  const { region, country, stepDeg, from, years, seed, box } = settings;
  return {
    type: 'FeatureCollection',
    schema: 'neckfall/atlas@1',
    engine: version,
    region,
    country,
    stepDeg,
    class: settings.class,
    start: settings.start,
    from: formatDay(from),
    years,
    seed,
    ...atlasGrounds(settings, speaker('metric')),
    warnings: [],
    // section 5.2: over the date line, west is the larger number
    bbox: [box.westDeg, box.southDeg, box.eastDeg, box.northDeg],
  };
}

function featureOf({ latitudeDeg, longitudeDeg, ...properties }: AtlasPointRow) {
  return {
    type: 'Feature',
    // section 3.1.1: longitude first
    geometry: { type: 'Point', coordinates: [longitudeDeg, latitudeDeg] },
    properties,
  };
}
