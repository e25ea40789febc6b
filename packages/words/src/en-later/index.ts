import { appJobs } from './app-jobs.ts';
import { appSeen } from './app-seen.ts';
import { appWeather } from './app-weather.ts';
import { appWhen } from './app-when.ts';
import { appWhich } from './app-which.ts';
import { jobs } from './jobs.ts';

/** What only pages after the first one say: fetched with them. */
export const later = [appJobs, appSeen, appWeather, appWhen, appWhich, jobs] as const;
