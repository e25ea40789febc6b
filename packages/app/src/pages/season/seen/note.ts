import type { Observation } from '@neckfall/engine';
import { withoutSeen, withSeen, withSeenChanged } from '../../../garden/seen.ts';
import { changeGarden } from '../../../state/garden.ts';
import { arePhotosPassing, keepPhoto } from '../../../state/photos.ts';
import { planting } from '../../../state/planting.ts';
import { voice } from '../../../state/settings.ts';
import type { SeasonAhead } from '../../../worker/season-ahead.ts';
import { keepPlan, planToSave } from '../keep-plan.ts';
import { tell } from '../told.ts';
import { entryWords } from './entry-words.ts';

/** Notes what was seen of the crop shown; a plan that is not kept yet is kept first. False where that failed. */
export async function noteSeen(
  entry: Observation,
  ahead: SeasonAhead,
  photo: File | null = null,
): Promise<boolean> {
  const known = planting.value;
  const plan = planToSave(ahead);
  const { id, name } = known ?? { id: await keepPlan(plan, null), name: plan.name };
  if (id === null) return false;
  const isDone = await changeGarden({ code: 'seen', name }, (now) => withSeen(now, id, entry));
  const { say } = voice.value;
  const words = [
    say('app.seen.noted', { entry: entryWords(entry, voice.value) }),
    ...(known ? [] : [say('app.seen.kept-first', { name })]),
    ...(isDone ? await photoWords(entry, photo) : []),
  ];
  return tell(isDone, { at: 'entry', words: words.join(' '), of: id });
}

export async function changeSeen(entry: Observation, photo: File | null): Promise<boolean> {
  const { name, id } = planting.value ?? { name: '', id: '' };
  const isDone = await changeGarden(
    { code: 'seen-changed', name },
    (now) => now && withSeenChanged(now, entry),
  );
  const words = [
    voice.value.say('app.seen.changed', { entry: entryWords(entry, voice.value) }),
    ...(isDone ? await photoWords(entry, photo) : []),
  ];
  return tell(isDone, { at: 'list', words: words.join(' '), of: id });
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

/** Keeps the photo of an entry; what there is to say of that. */
async function photoWords({ id }: Observation, photo: File | null): Promise<string[]> {
  if (photo === null) return [];
  const { say } = voice.value;
  try {
    const refused = await keepPhoto(id, photo);
    if (refused) {
      const mb = 'bytes' in refused ? { size: refused.bytes / 1e6, most: refused.most / 1e6 } : {};
      return [say(`app.seen.photo.${refused.problem}`, { file: photo.name, ...mb })];
    }
    return arePhotosPassing.value ? [say('app.seen.photo.passing')] : [];
  } catch (error) {
    return [say('app.seen.photo.failed', { reason: (error as Error).message })];
  }
}
