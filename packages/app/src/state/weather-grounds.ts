import { type DayNumber, parseDay } from '@neckfall/engine';
import { grownSite } from './grown-site.ts';
import { voice } from './settings.ts';
import { weatherFault, weatherHere } from './weather.ts';

/** What a crop started on a day rests on of the weather that is kept here. */
export function weatherGrounds(startDay: DayNumber): string[] {
  const { say, dayWithYear } = voice.value;
  if (weatherFault.value !== null) return [say('app.weather.kept.fault', { fault: weatherFault.value })];
  const met = grownSite.value?.weather;
  const end = met ? met.record.firstDay + met.record.days : 0;
  if (!met || startDay > met.lastStart || startDay >= end) return [];
  const date = weatherHere.value?.forecastFrom ?? null;
  const ahead = date === null ? null : parseDay(date);
  return [
    say('app.weather.assumed', {
      from: dayWithYear(met.record.firstDay),
      to: dayWithYear(end - 1),
      forecast: ahead === null || ahead >= end ? 'none' : dayWithYear(ahead),
    }),
  ];
}
