import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, watch } from 'node:fs';
import { dirname } from 'node:path';
import { program } from '../run-neckfall.ts';

/** Starts a map and ends it by a signal as soon as its part holds a tile or more; gives how it ended. */
export async function killedOnce(args: readonly string[], part: string, signal: NodeJS.Signals) {
  const child = spawn(process.execPath, [program, ...args], { stdio: ['ignore', 'ignore', 'pipe'] });
  let stderr = '';
  child.stderr.on('data', (text) => {
    stderr += text;
  });
  const watcher = watch(dirname(part));
  const look = () => {
    // the head and a tile
    if (existsSync(part) && readFileSync(part, 'utf8').split('\n').length > 2) child.kill(signal);
  };
  watcher.on('change', look);
  const [code] = (await once(child, 'close')) as [number | null];
  watcher.close();
  return { code, stderr };
}
