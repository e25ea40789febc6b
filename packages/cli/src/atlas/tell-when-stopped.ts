import { writeSync } from 'node:fs';
import type { Speaker } from '@neckfall/words';
import { shown } from '@neckfall/words';

const interrupted = 130;

/** Says as the last thing how a map that is stopped by Ctrl-C goes on. */
export function tellWhenStopped(path: string, { say }: Pick<Speaker, 'say'>): { done: () => void } {
  const onExit = (code: number) => {
    if (code === interrupted) writeSync(2, `\n${shown(say('mapping.stopped', { file: path }))}\n`);
  };
  process.on('exit', onExit);
  return { done: () => void process.off('exit', onExit) };
}
