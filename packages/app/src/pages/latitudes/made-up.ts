import { latitudeName, warmthWords } from '@neckfall/answers';
import { lastLatitude, latitudeYears } from '@neckfall/engine';
import type { PictureOf } from '../../controls/PictureCopies.tsx';
import { voice } from '../../state/settings.ts';

/** Whose numbers a kept picture shows: those of no real place. */
export function madeUp(latitudeDeg: number, warmerC: number): PictureOf {
  const speaker = voice.value;
  const place = latitudeName(latitudeDeg, speaker);
  const where = speaker.say('app.latitudes.take.where', { place, warmth: warmthWords(warmerC, speaker) });
  return { called: place, where, years: latitudeYears };
}

/** The same of all the way from the equator toward a pole. */
export function madeUpWay(side: 1 | -1, warmerC: number): PictureOf {
  const speaker = voice.value;
  const where = speaker.say('app.latitudes.take.way', {
    place: latitudeName(side * lastLatitude, speaker),
    warmth: warmthWords(warmerC, speaker),
  });
  return { called: speaker.say('app.page.latitudes'), where, years: latitudeYears };
}
