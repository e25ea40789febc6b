import { type DayNumber, engineVersion } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

type MapSource = {
  /** What the map is of, in words. */
  region: string;
  stepDeg: number;
  /** Made-up years of weather at each point. */
  years: number;
  /** The day it was made. */
  today: DayNumber;
};

/** Where a map comes from, in the one line that goes with it wherever it is taken; see `pictureSource`. */
export function mapSource({ region, stepDeg, years, today }: MapSource, speaker: Speaker): string {
  const { say, number } = speaker;
  return say('picture.atlas.source', {
    version: engineVersion,
    region,
    step: number(stepDeg, 3),
    years,
    sources: [say('source.chelsa'), say('source.cru'), say('source.geonames')].join(', '),
    date: speaker.dayWithYear(today),
  });
}
