import { coordinateWords } from '@neckfall/answers';
import type { Speaker } from '@neckfall/words';
import type { YearDocument } from './read-year.ts';

type Point = { latitudeDeg: number; longitudeDeg: number };

/** "Lyon, 45.75° N, 4.85° E" */
export function pointWords(name: string | null, point: Point, speaker: Speaker): string {
  const { say } = speaker;
  const words = coordinateWords(point, speaker);
  return name === null ? say('element.point', words) : say('picture.source.place', { name, ...words });
}

export function sourceOfData(name: string | null, found: YearDocument, speaker: Speaker): string {
  const { say } = speaker;
  return say('picture.source', {
    version: found.engine,
    place: pointWords(name ?? found.name, found, speaker),
    years: found.years,
    weather: found.weather,
    sources: [say('source.chelsa'), say('source.cru'), say('source.geonames')].join(', '),
    date: speaker.dayWithYear(found.made),
  });
}

export function sourceOfSky(place: string, version: string, { say }: Speaker): string {
  return say('element.source', { version, place });
}
