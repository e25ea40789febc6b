import { type Ground, type OpenFrame, openFrame, openGround } from '../frame/frame.ts';
import type { Assets } from '../place/assets.ts';

/** Places kept open, each some 3 MB of weather. */
const placesKept = 2;

/** Rows of one place share its weather: the last few places stay open. */
export function sharedGround(assets: Assets): OpenFrame {
  const grounds = new Map<string, Ground>();
  return (options, speaker) => {
    const place = JSON.stringify(options.asked);
    const ground = grounds.get(place) ?? openGround(options, speaker, assets);
    // the last used is the last in the map
    grounds.delete(place);
    grounds.set(place, ground);
    if (grounds.size > placesKept)
      for (const oldest of [...grounds.keys()].slice(0, 1)) grounds.delete(oldest);
    return openFrame(options, speaker, assets, ground);
  };
}
