import { calendarText, sequenceOf } from '@neckfall/answers';
import { formatDay } from '@neckfall/engine';
import { planting } from '../../../state/planting.ts';
import { asked } from '../../../state/route.ts';
import { voice } from '../../../state/settings.ts';
import { machineToday } from '../../../state/today.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { planToSave } from '../keep-plan.ts';

/** The work of the season as a file for calendars; one saved later holds over one saved before. */
export function calendarFile(ahead: SeasonAhead, now = new Date()): Blob {
  const { summary, jobs } = ahead;
  const today = machineToday(now);
  const crop = { id: idOf(ahead), name: planting.value?.name ?? planToSave(ahead).name, summary, jobs };
  const sequence = sequenceOf(today, now.getHours() * 60 + now.getMinutes());
  return new Blob([calendarText([crop], { today, sequence }, voice.value)], { type: 'text/calendar' });
}

/** A plan that is not kept is known by what it is. */
function idOf({ summary: { plan } }: SeasonAhead): string {
  if (planting.value) return planting.value.id;
  const { latitudeDeg = 0, longitudeDeg = 0 } = asked.value.at ?? {};
  return [latitudeDeg, longitudeDeg, plan.type, plan.start, formatDay(plan.startDay)].join(' ');
}
