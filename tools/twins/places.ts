import { readClimateNodes } from '../../packages/data/src/node.ts';
import {
  climateAt,
  dayNumber,
  landWarmingSinceNormalsC,
  type MonthlyClimate,
  type OnionType,
  type Plan,
  planDefaults,
  type StartMethod,
  warmed,
} from '../../packages/engine/src/index.ts';

/** A crop that is grown somewhere, in a calendar year: a place, a type and a way of starting of its own. */
export type Setting = {
  name: string;
  words: string;
  climate: MonthlyClimate;
  planIn: (year: number) => Plan;
};

const assets = new URL('../../packages/data/assets/climate.bin', import.meta.url);

/** Eight of them, from 57° N to 37° S; where they lie is GeoNames (CC BY 4.0), as in the town list. */
export function settings(): Setting[] {
  const nodes = readClimateNodes(assets.pathname);
  const setting = (
    name: string,
    [latitudeDeg, longitudeDeg, elevationM]: readonly [number, number, number],
    words: string,
    type: OnionType,
    start: StartMethod,
    [month, day]: readonly [number, number],
  ): Setting => ({
    name,
    words,
    climate: warmed(climateAt(nodes, latitudeDeg, longitudeDeg, elevationM), landWarmingSinceNormalsC),
    planIn: (year) => ({ ...planDefaults, type, start, startDay: dayNumber(year, month, day) }) as Plan,
  });
  return [
    setting('Aberdeen', [57.144, -2.098, 13], 'long-day sets', 'northern-long', 'sets', [4, 10]),
    setting('London', [51.509, -0.126, 25], 'long-day seed', 'northern-long', 'direct-seed', [3, 20]),
    setting(
      'Winnipeg',
      [49.884, -97.147, 245],
      'long-day plants',
      'northern-long',
      'bought-transplants',
      [5, 10],
    ),
    setting('Lyon', [45.749, 4.847, 173], 'early long-day seed', 'early-long', 'direct-seed', [3, 10]),
    setting(
      'Sacramento',
      [38.582, -121.494, 8],
      'intermediate seed in autumn',
      'intermediate',
      'direct-seed',
      [10, 10],
    ),
    setting('Seville', [37.383, -5.973, 16], 'short-day seed in autumn', 'short', 'direct-seed', [10, 5]),
    setting(
      'Niamey',
      [13.514, 2.11, 206],
      'tropical seedlings',
      'tropical-short',
      'raised-seedlings',
      [10, 20],
    ),
    setting(
      'Auckland',
      [-36.849, 174.763, 43],
      'intermediate seedlings',
      'intermediate',
      'raised-seedlings',
      [6, 1],
    ),
  ];
}
