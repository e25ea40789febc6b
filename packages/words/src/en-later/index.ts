import { appSeen } from './app-seen.ts';
import { appWeather } from './app-weather.ts';
import { appWhen } from './app-when.ts';
import { appWhich } from './app-which.ts';
import { watering } from './watering.ts';

/** What only pages after the first one say: fetched with them. */
export const later = [appSeen, appWeather, appWhen, appWhich, watering] as const;
