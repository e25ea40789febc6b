import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/**
 * Gives back the weather of places done with. The collector of garbage would wait for 64 MB of it in every thread
 * (V8's limit for memory outside its heap), and a thread of a batch makes 3 MB of it a place.
 */
export function memoryReleaser(): () => void {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as (options?: { type: 'minor' }) => void;
  return () => collect({ type: 'minor' });
}
