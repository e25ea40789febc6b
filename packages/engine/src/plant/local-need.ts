import type { OnionType } from './kinds.ts';
import type { PlantValues, TypeValues } from './parameters.ts';

/**
 * Longest sun-up days, h, of the places a type is bred for, and of the middle of them, where its need is the type's own;
 * `strangersH`: of the places where kinds are bred that are sold nearer the equator than that (all memory: early long-day
 * seed in the subtropics is that of the Spanish kinds of 46°).
 */
const bredFor: Readonly<
  Record<OnionType, { fromH: number; middleH: number; toH: number; strangersH: number }>
> = {
  'tropical-short': { fromH: 12, middleH: 13, toH: 13.6, strangersH: 13 },
  short: { fromH: 12.8, middleH: 14, toH: 15.4, strangersH: 14 },
  intermediate: { fromH: 13.4, middleH: 14.5, toH: 16, strangersH: 14.5 },
  'early-long': { fromH: 14.2, middleH: 14.8, toH: 15.7, strangersH: 15.7 },
  'northern-long': { fromH: 15.2, middleH: 15.4, toH: 17, strangersH: 15.4 },
};

/** Over so much shorter summers than those of its home the strangers take over, h. */
const fadesOverH = 0.4;

/**
 * Photoperiod (civil twilight) above which the kinds of a type that are sold in a place are induced, h: kinds are bred
 * where they are sold, and those of longer summers ask for longer days.
 *
 * @param longestDayH longest sun-up day of the place, h
 */
function localPhotoperiodH(type: OnionType, own: TypeValues, longestDayH: number): number {
  const { fromH, middleH, toH, strangersH } = bredFor[type];
  const within = Math.min(toH, Math.max(fromH, longestDayH));
  const strange = Math.min(1, Math.max(0, (fromH - longestDayH) / fadesOverH));
  const bredAtH = within + strange * (strangersH - within);
  return own.criticalPhotoperiodH + own.photoperiodPerH * (bredAtH - middleH);
}

/** The values of the kinds sold in a place; told again for the same place, they stay. */
export function valuesAt(values: PlantValues, longestDayH: number): PlantValues {
  const types = Object.entries(values.types).map(([type, own]) => [
    type,
    {
      ...own,
      criticalPhotoperiodH: localPhotoperiodH(type as OnionType, own, longestDayH),
      photoperiodPerH: 0,
    },
  ]);
  return { ...values, types: Object.fromEntries(types) as PlantValues['types'] };
}
