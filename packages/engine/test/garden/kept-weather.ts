import { dayNumber } from '../../src/calendar/index.ts';
import type { GardenWeather } from '../../src/garden/index.ts';

export const may1 = dayNumber(2027, 5, 1);

/** Five days that a garden keeps, of which the third has no minimum. */
export const keptWeather: GardenWeather = {
  id: 'w',
  placeId: 'bank',
  firstDate: '2027-05-01',
  tempMinC: [4, 5, null, 7, 8],
  tempMaxC: [14, 15, 16, 17, 18],
  rainMm: [0, 0, 3, 0, 0],
  solarMJ: [null, null, null, null, null],
  forecastFrom: null,
  sources: [],
};
