import type { Plan } from '@neckfall/engine';
import { onion } from './onion.ts';
import { asked } from './route.ts';
import { voice } from './settings.ts';

/**
 * What was asked and could not be taken, and what was chosen because nothing was asked.
 *
 * @param chosen how the page says that something was
 */
export function planNotes(
  plan: Plan,
  chosen: 'app.season.chosen' | 'app.why.crop.chosen' = 'app.season.chosen',
): string[] {
  const { say, dayWithYear } = voice.value;
  const { class: printed, start, date, plantOut } = asked.value;
  const { crop, cultivar, own, unknown, starts } = onion.value;
  const notes: string[] = [];
  if (own && crop === null) notes.push(say('app.garden.onion.unused', { name: own.name }));
  if (unknown?.isOtherCrop) notes.push(say('app.season.onion.other', { name: unknown.name }));
  else if (unknown && crop && 'packet' in crop)
    notes.push(say('app.garden.onion.from-link', { name: unknown.name }));
  else if (unknown) {
    const kind = printed === null ? 'none' : say(`class.${printed}`);
    notes.push(say('app.season.onion.unknown', { name: unknown.name, kind }));
  }
  if (start !== null && cultivar && !starts.includes(start)) {
    notes.push(
      say('app.season.start.not-had', { name: cultivar.name, start: say(`app.season.start.${start}`) }),
    );
  } else if (crop === null || start === null || date === null) notes.push(say(chosen));
  if (plantOut !== null && plan.start === 'raised-seedlings' && plan.plantOutDay === null)
    notes.push(say('app.season.plant-out.unused', { date: dayWithYear(plantOut) }));
  return notes;
}
