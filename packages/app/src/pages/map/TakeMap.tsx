import { mapSource } from '@neckfall/answers';
import type { LandOutline } from '@neckfall/data';
import { formatDay, type Region } from '@neckfall/engine';
import {
  AtlasMap,
  type MapPoint,
  type MapShows,
  mapKeyWords,
  paperColours,
  svgText,
} from '@neckfall/pictures';
import { useState } from 'preact/hooks';
import { Fold } from '../../controls/Fold.tsx';
import { pngOfSvg } from '../../device/png-of-svg.ts';
import { csvText } from '../../files/csv-text.ts';
import { fileName } from '../../files/file-name.ts';
import { saveFile } from '../../files/save-file.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import { type leadsOf, mapYears } from './atlas-held.ts';

type Props = {
  region: Region;
  regionName: string;
  shows: MapShows;
  outline: LandOutline | null;
  leads: ReturnType<typeof leadsOf>;
  wholeDeg: number;
  lead: string;
};

type Told = { state: 'done'; file: string } | { state: 'failed'; file: string; reason: string };

/** As wide as a desk, px; finer fields than of one degree could not be seen on it. */
const width = 1240;
const mostHeight = 760;

/** Copies to take along: the map as a picture, its points as a table. */
export function TakeMap({ region, regionName, shows, outline, leads, wholeDeg, lead }: Props) {
  const speaker = voice.value;
  const { say } = speaker;
  const [told, tell] = useState<Told | null>(null);
  const words = [say('app.page.map'), regionName, say(`app.atlas.shows.${shows}`)];
  const points = () => leads.leadsOn(region, wholeDeg);

  const picture = (outline: LandOutline) => {
    const summary = say('picture.atlas.summary', { region: regionName, shows, lead });
    const all = { region, points: points(), stepDeg: wholeDeg, shows, outline, width, mostHeight };
    return svgText(<AtlasMap {...all} words={{ ...mapKeyWords(speaker), summary }} />, {
      // kept to be put on paper, which is light whatever the page is
      colours: paperColours,
      title: summary,
      caption: [
        mapSource({ region: regionName, stepDeg: wholeDeg, years: mapYears, today: today.value }, speaker),
      ],
    });
  };

  async function save(ending: string, make: () => Blob | Promise<Blob>): Promise<void> {
    const file = fileName(words, ending);
    try {
      saveFile(file, await make());
      tell({ state: 'done', file });
    } catch (error) {
      tell({ state: 'failed', file, reason: (error as Error).message });
    }
  }

  return (
    <Fold class="take-along" id="take-along" title={say('app.season.save')}>
      <div class="row">
        {outline && (
          <>
            <button
              type="button"
              onClick={() => save('.svg', () => new Blob([picture(outline)], { type: 'image/svg+xml' }))}
            >
              {say('app.atlas.save.svg')}
            </button>
            <button type="button" onClick={() => save('.png', () => pngOfSvg(picture(outline)))}>
              {say('app.atlas.save.png')}
            </button>
          </>
        )}
        <button
          type="button"
          onClick={() => save('.csv', () => new Blob([csvText(points().map(rowOf))], { type: 'text/csv' }))}
        >
          {say('app.atlas.save.csv')}
        </button>
      </div>
      <p role="status">
        {told?.state === 'done' && say('app.season.save.done', { file: told.file })}
        {told?.state === 'failed' && say('app.season.save.failed', { file: told.file, reason: told.reason })}
      </p>
    </Fold>
  );
}

function rowOf({ latitudeDeg, longitudeDeg, entry }: MapPoint) {
  const { type, start, startDay, goodShare, neckFallDay, bulbDiameterMm, outcome } = entry;
  const to = (digits: number) => (value: number) => Number(value.toFixed(digits));
  return {
    latitude: latitudeDeg,
    longitude: longitudeDeg,
    class: entry.class,
    type,
    start,
    startDay: formatDay(startDay),
    goodShare: to(2)(goodShare),
    outcome,
    neckFallDay: neckFallDay === null ? null : formatDay(Math.round(neckFallDay)),
    bulbDiameterMm: bulbDiameterMm === null ? null : to(0)(bulbDiameterMm),
  };
}
