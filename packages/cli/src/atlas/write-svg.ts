import { atlasLead, atlasRegionNames, mapSource } from '@neckfall/answers';
import { loadLandOutline } from '@neckfall/data/node';
import { AtlasMap, type MapShows, mapKeyWords, paperColours, svgText } from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import { assetsFolder } from '../assets-folder.ts';
import { type AtlasPointRow, mapPoint } from './atlas-point.ts';
import type { AtlasSettings } from './settings.ts';
import type { AtlasWriter } from './writers.ts';

/** As wide as a desk, and no higher than it, px. */
const size = { width: 1240, mostHeight: 760 } as const;

/** The map as a picture that stands alone. @param shows what of the onions is drawn */
export function svgWriter(shows: MapShows, speaker: Speaker): AtlasWriter {
  return {
    *texts(settings, tiles) {
      yield svgOf(settings, [...tiles].flat(), shows, speaker);
    },
  };
}

/** The same as an image. */
export function pngWriter(shows: MapShows, speaker: Speaker): AtlasWriter {
  return {
    async *texts(settings, tiles) {
      // the rasteriser is large, and no other command waits for it
      const { pngOfSvgText } = await import('../raster/png-of-svg-text.ts');
      yield pngOfSvgText(svgOf(settings, [...tiles].flat(), shows, speaker));
    },
  };
}

function svgOf(
  settings: AtlasSettings,
  rows: readonly AtlasPointRow[],
  shows: MapShows,
  speaker: Speaker,
): string {
  const { box: region, stepDeg, years, from } = settings;
  const { say } = speaker;
  const points = rows.map(mapPoint);
  const lead = atlasLead(points, { shows, class: settings.class }, speaker).join(' ');
  const name = regionName(settings.region, speaker);
  const summary = say('picture.atlas.summary', { region: name, shows, lead });
  const outline = loadLandOutline(assetsFolder);
  const words = { ...mapKeyWords(speaker), summary };
  const picture = AtlasMap({ region, points, stepDeg, shows, outline, words, ...size });
  const caption = [mapSource({ region: name, stepDeg, years, today: from }, speaker)];
  return svgText(picture, { colours: paperColours, title: summary, caption });
}

/** What a map is of in words: a part of the Earth by its name, anything else as it was typed. */
function regionName(region: string, { say }: Speaker): string {
  const known = atlasRegionNames.find((name) => name === region);
  return known ? say(`app.atlas.view.${known}`) : region;
}
