import type { Observation } from '@neckfall/engine';
import { signal } from '@preact/signals';
import { withoutSeen, withSeen, withSeenChanged } from '../../../garden/seen.ts';
import { changeGarden, undoGarden } from '../../../state/garden.ts';
import { planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { keepPlan, planToSave } from '../keep-plan.ts';
import { entryWords } from './entry-words.ts';

/** What was done last, said where it was done. */
type Told = { at: 'entry' | 'list'; words: string; of: string };

export const told = signal<Told | null>(null);

/** Notes what was seen of the crop shown; a plan that is not kept yet is kept first. False where that failed. */
export async function noteSeen(entry: Observation, ahead: SeasonAhead): Promise<boolean> {
  const known = planting.value;
  const plan = planToSave(ahead);
  const { id, name } = known ?? { id: await keepPlan(plan, null), name: plan.name };
  if (id === null) return false;
  const isDone = await changeGarden({ code: 'seen', name }, (now) => withSeen(now, id, entry));
  const { say } = voice.value;
  const words = [
    say('app.seen.noted', { entry: entryWords(entry, voice.value) }),
    ...(known ? [] : [say('app.seen.kept-first', { name })]),
  ];
  return tell(isDone, { at: 'entry', words: words.join(' '), of: id });
}

export async function changeSeen(entry: Observation): Promise<boolean> {
  const { name, id } = planting.value ?? { name: '', id: '' };
  const isDone = await changeGarden(
    { code: 'seen-changed', name },
    (now) => now && withSeenChanged(now, entry),
  );
  const words = voice.value.say('app.seen.changed', { entry: entryWords(entry, voice.value) });
  return tell(isDone, { at: 'list', words, of: id });
}

export async function removeSeen(entry: Observation): Promise<boolean> {
  const { name, id } = planting.value ?? { name: '', id: '' };
  const isDone = await changeGarden(
    { code: 'seen-removed', name },
    (now) => now && withoutSeen(now, entry.id),
  );
  const words = voice.value.say('app.seen.removed', { entry: entryWords(entry, voice.value) });
  return tell(isDone, { at: 'list', words, of: id });
}

function tell(isDone: boolean, what: Told): boolean {
  told.value = isDone ? what : null;
  return isDone;
}

export async function takeBack(): Promise<void> {
  if (await undoGarden()) told.value = null;
}
