import type { AtlasEntry } from '@neckfall/engine';

/** Less often than this is hardly ever, 0…1: no year in ten when rounded. */
const hardlyEver = 0.05;

/** Whether good bulbs come there in hardly any year: a map leaves the ground bare. */
export function isBareGround({ goodShare }: Pick<AtlasEntry, 'goodShare'>): boolean {
  return goodShare < hardlyEver;
}
