import { atlasLead, atlasRegionNames } from '@neckfall/answers';
import { loadLandOutline } from '@neckfall/data/node';
import { AtlasMap, type MapShows, mapKeyWords, paperColours, svgText } from '@neckfall/pictures';
import type { Speaker } from '@neckfall/words';
import { assetsFolder } from '../assets-folder.ts';
import { mapPoint } from './atlas-point.ts';
import type { AtlasWriter } from './writers.ts';

/** As wide as a desk, and no higher than it, px. */
const size = { width: 1240, mostHeight: 760 } as const;

/** The map as a picture that stands alone. @param shows what of the onions is drawn */
export function svgWriter(shows: MapShows, speaker: Speaker): AtlasWriter {
  return {
    *texts(settings, tiles) {
      const points = [...tiles].flat().map(mapPoint);
      const lead = atlasLead(points, { shows, class: settings.class }, speaker).join(' ');
      const summary = speaker.say('picture.atlas.summary', {
        region: regionName(settings.region, speaker),
        shows,
        lead,
      });
      const outline = loadLandOutline(assetsFolder);
      const words = { ...mapKeyWords(speaker), summary };
      const { box: region, stepDeg } = settings;
      const picture = AtlasMap({ region, points, stepDeg, shows, outline, words, ...size });
      yield svgText(picture, { colours: paperColours, title: summary });
    },
  };
}

/** What a map is of in words: a part of the Earth by its name, anything else as it was typed. */
function regionName(region: string, { say }: Speaker): string {
  const known = atlasRegionNames.find((name) => name === region);
  return known ? say(`app.atlas.view.${known}`) : region;
}
