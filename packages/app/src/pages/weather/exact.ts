import { celsiusToFahrenheit, mmToInches } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Values of a record as a thermometer shows them, to a tenth; their units stand over them. */
export function exactly({ units, number }: Speaker) {
  const isUs = units === 'us';
  return {
    tempUnit: isUs ? '°F' : '°C',
    rainUnit: isUs ? 'in' : 'mm',
    temp: (tempC: number) => number(isUs ? celsiusToFahrenheit(tempC) : tempC, 1),
    rain: (mm: number) => number(isUs ? mmToInches(mm) : mm, isUs ? 2 : 1),
    sun: (megajoules: number) => number(megajoules, 1),
  };
}
