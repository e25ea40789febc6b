import { type DayNumber, engineVersion } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';
import { coordinateWords, type LabelledPlace, placeLabel } from '../place/index.ts';

export type PictureSource = {
  /** What it is of, in words; see {@link sourcePlace}. */
  where: string;
  /** Made-up years of weather that the numbers rest on. */
  years: number;
  /** Whether days are those of the climate alone, some as measured, or all. */
  weather: 'drawn' | 'some' | 'measured';
  /** The day it was made. */
  today: DayNumber;
};

/** Where a picture comes from, in the one line that goes with it wherever it is taken: whose numbers, of which place, when. */
export function pictureSource(source: PictureSource, speaker: Speaker): string {
  const { where, years, weather, today } = source;
  const { say } = speaker;
  return say('picture.source', {
    version: engineVersion,
    place: where,
    years,
    weather,
    sources: [say('source.chelsa'), say('source.cru'), say('source.geonames')].join(', '),
    date: speaker.dayWithYear(today),
  });
}

/** A place with its degrees. @param ownName the reader's own name for it; null where there is none */
export function sourcePlace(place: LabelledPlace, ownName: string | null, speaker: Speaker): string {
  const label = placeLabel(place, speaker);
  // a point without a name is called by its degrees
  if (ownName === null && place.town === null) return label;
  return speaker.say('picture.source.place', { name: ownName ?? label, ...coordinateWords(place, speaker) });
}
