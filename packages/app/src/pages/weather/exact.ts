import { celsiusToFahrenheit, mmToInches } from '@neckfall/engine';
import type { Speaker } from '@neckfall/words';

/** Values of a record as a thermometer shows them, to a tenth; their units stand over them. */
export function exactly({ units, figure }: Speaker) {
  const isUs = units === 'us';
  return {
    tempUnit: isUs ? '°F' : '°C',
    rainUnit: isUs ? 'in' : 'mm',
    temp: (tempC: number) => figure(isUs ? celsiusToFahrenheit(tempC) : tempC, 1),
    rain: (mm: number) => figure(isUs ? mmToInches(mm) : mm, isUs ? 2 : 1),
    sun: (megajoules: number) => figure(megajoules, 1),
  };
}
