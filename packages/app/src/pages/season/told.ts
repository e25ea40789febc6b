import { effect, signal } from '@preact/signals';
import { openedFile, undoGarden } from '../../state/garden.ts';

/** Where on the page something was done. */
export type ToldAt = 'entry' | 'list' | 'week' | 'work';

/** What was done last, said where it was done; `of` is the id of its planting. */
type Told = { at: ToldAt; words: string; of: string };

export const told = signal<Told | null>(null);

// in a garden that was just opened nothing was done yet, though it may hold the same planting
effect(() => {
  if (openedFile.value !== null) told.value = null;
});

/** Where something was tried last, so that a failure is said there. */
export const triedAt = signal<ToldAt>('entry');

export function tell(isDone: boolean, what: Told): boolean {
  triedAt.value = what.at;
  told.value = isDone ? what : null;
  return isDone;
}

export async function takeBack(): Promise<boolean> {
  const isBack = await undoGarden();
  if (isBack) told.value = null;
  return isBack;
}
