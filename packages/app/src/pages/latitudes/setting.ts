import {
  civilDate,
  type DayLengthClass,
  dayNumber,
  lastLatitude,
  mostWarmerC,
  type OnionType,
  onionTypes,
  sowingYear,
} from '@neckfall/engine';
import type { Asked } from '../../address/address-form.ts';
import { readNumber } from '../../address/form-kinds.ts';

/** Where one stands, how warm it is there, what is sown when. */
export type Setting = {
  /** Whole degrees; −0 is the equator on the way south. */
  latitudeDeg: number;
  warmerC: number;
  startDay: number;
  type: OnionType;
};

/** A value of the link that could not be taken. */
export type Misread = { what: 'latitude' | 'warmth' | 'kind'; value: string };

const usualLatitude = 45;
const typeOfClass: Readonly<Record<DayLengthClass, OnionType>> = {
  short: 'short',
  intermediate: 'intermediate',
  long: 'northern-long',
};

/**
 * The setting that an address asks for, and what of it could not be read.
 *
 * @param homeDeg latitude of the reader's own place, from which the walk sets out; null where none is known
 */
export function settingOf(
  asked: Asked,
  today: number,
  homeDeg: number | null,
): { setting: Setting; misread: Misread[] } {
  const misread: Misread[] = [];
  const read = <Value>(what: Misread['what'], text: string | null, way: (text: string) => Value | null) => {
    const value = text === null ? null : way(text);
    if (text !== null && value === null) misread.push({ what, value: text });
    return value;
  };
  const latitudeDeg =
    read('latitude', asked.latitude, (text) => {
      const degrees = readNumber(text);
      return degrees !== null && Number.isInteger(degrees) && Math.abs(degrees) <= lastLatitude
        ? degrees
        : null;
    }) ?? startingFrom(homeDeg);
  const warmerC =
    read('warmth', asked.warmth, (text) => {
      const degrees = readNumber(text);
      return degrees !== null && Math.abs(degrees) <= mostWarmerC ? degrees : null;
    }) ?? 0;
  const type =
    read('kind', asked.shows, (text) => onionTypes.find((one) => one === text) ?? null) ??
    typeOfClass[asked.class ?? 'long'];
  return {
    setting: { latitudeDeg, warmerC, type, startDay: asked.date ?? usualSowing(today, latitudeDeg) },
    misread,
  };
}

/** The same in an address. */
export function addressOf({ latitudeDeg, warmerC, startDay, type }: Setting): Partial<Asked> {
  return {
    latitude: isSouth(latitudeDeg) ? `-${Math.abs(latitudeDeg)}` : `${latitudeDeg}`,
    warmth: `${warmerC}`,
    date: startDay,
    shows: type,
    class: null,
  };
}

export function isSouth(latitudeDeg: number): boolean {
  return latitudeDeg < 0 || Object.is(latitudeDeg, -0);
}

/** So many degrees from the equator on a side of it. */
export function latitudeOn(side: 1 | -1, degrees: number): number {
  return side * degrees;
}

/** Half a year on, so that spring stays spring on the other side of the equator. */
export function turned(setting: Setting): Setting {
  const latitudeDeg = -setting.latitudeDeg;
  const { year, month, day } = civilDate(setting.startDay);
  const [turnedYear, turnedMonth] = month > 6 ? [year + 1, month - 6] : [year, month + 6];
  return { ...setting, latitudeDeg, startDay: dayNumber(turnedYear, turnedMonth, Math.min(day, 28)) };
}

function startingFrom(homeDeg: number | null): number {
  if (homeDeg === null) return usualLatitude;
  return Math.max(-lastLatitude, Math.min(lastLatitude, Math.round(homeDeg)));
}

/** 20 March of the gardener's year that holds today; 20 September south of the equator. */
function usualSowing(today: number, latitudeDeg: number): number {
  const { year } = civilDate(sowingYear(today, latitudeDeg));
  return latitudeDeg < 0 ? dayNumber(year, 9, 20) : dayNumber(year + 1, 3, 20);
}
