import type { DayNumber } from '../calendar/index.ts';
import { type DayLengthClass, defaultPlantValues, type StartMethod, valuesAt } from '../plant/index.ts';
import { neededSunUpH, skyGround } from '../season/index.ts';
import { typeForClass } from './type-for-class.ts';

/**
 * Sun-up hours from which the onions of a class that are sold at a place are called to their bulbs, h. It hangs on the
 * latitude alone, so no climate need be at hand; the longitude moves it by seconds.
 *
 * @throws RangeError naming a latitude or longitude that is none
 */
export function classNeedSunUpH(
  point: { latitudeDeg: number; longitudeDeg: number },
  dayLengthClass: DayLengthClass,
  start: StartMethod,
  startDay: DayNumber,
): number {
  const ground = skyGround(point);
  const type = typeForClass(ground, dayLengthClass, start, startDay);
  const { types } = valuesAt(defaultPlantValues, ground.longestDayH);
  return neededSunUpH(ground, types[type].criticalPhotoperiodH);
}
