import type { Town } from '@neckfall/data';
import { ask, askGround, cancel, cancelGround } from '../ask/ask.ts';
import { siteOn } from './place.ts';
import { startOptions } from './start-options.ts';
import { today } from './today.ts';

const locating = 'locateAhead';
/** As long as between two keys, and shorter than one looks at a list, ms. */
const restMs = 100;

/**
 * Has the answer for a town that may be chosen next worked out, once its list has stood for a moment; choosing it finds
 * it ready. Nothing of it is shown. Returns what calls it off.
 */
export function askAhead({ latitudeDeg, longitudeDeg, name }: Town): () => void {
  const rest = setTimeout(async () => {
    const point = { latitudeDeg, longitudeDeg, name, elevationM: null };
    const found = await askGround('locate', point, { topic: locating });
    if (found.state !== 'done' || 'problem' in found.answer) return;
    const request = { site: siteOn(found.answer), today: today.value, options: startOptions.value };
    await ask('whereAhead', request);
  }, restMs);
  return () => {
    clearTimeout(rest);
    cancelGround(locating);
    cancel('whereAhead');
  };
}
