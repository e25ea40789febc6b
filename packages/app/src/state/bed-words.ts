import type { GardenBed } from '@neckfall/engine';
import { voice } from './settings.ts';

/** What a bed says for all that lies in it: soil, sun, cover and water. */
export function sharedWords({ soil, sunHours, cover, water }: GardenBed): string[] {
  const { say, number } = voice.value;
  return [
    ...(soil === null ? [] : [say(`soil.${soil}`)]),
    ...(sunHours === null ? [] : [say('app.ground.hours', { hours: number(sunHours, 1) })]),
    ...(cover === null ? [] : [say(`cover.${cover}`)]),
    ...(water === null ? [] : [say(`water.${water}`)]),
  ];
}
