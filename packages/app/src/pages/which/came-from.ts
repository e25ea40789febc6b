import { type Choice, classOfType, type KindGroup } from '@neckfall/engine';
import { asked } from '../../state/route.ts';

/** Whether a kind is what the reader was looking at on another page; a day length alone means all its starts. */
export function isWhereCameFrom({ type, start }: Pick<KindGroup, 'type' | 'start'>): boolean {
  const { class: chosen, start: chosenStart } = asked.value;
  return chosen !== null && classOfType[type] === chosen && (chosenStart === null || start === chosenStart);
}

/** The best of what the reader was looking at; undefined where the list has none of it. */
export function bestOfCameFrom(choices: readonly Choice[]): Choice | undefined {
  return choices.find(({ kind }) => isWhereCameFrom(kind));
}
