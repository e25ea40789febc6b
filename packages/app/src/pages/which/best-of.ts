import { worthShowing } from '@neckfall/answers';
import type { Choice } from '@neckfall/engine';

/** As many as the command line names. */
const most = 20;

/** The choices that a list shows at first. */
export function bestOf(choices: readonly Choice[]): readonly Choice[] {
  return worthShowing(choices.slice(0, most));
}
