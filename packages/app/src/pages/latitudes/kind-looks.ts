import type { OnionType } from '@neckfall/engine';
import type { OnionLook } from '@neckfall/pictures';

/** How the five kinds are drawn, so that they can be told apart: skin and shape are those of many kinds on sale. */
export const kindLooks: Readonly<Record<OnionType, OnionLook>> = {
  'tropical-short': { colour: 'red', shape: 'flattened-globe' },
  short: { colour: 'white', shape: 'flattened-globe' },
  intermediate: { colour: 'pink', shape: 'globe' },
  'early-long': { colour: 'yellow', shape: 'globe' },
  'northern-long': { colour: 'brown', shape: 'globe' },
};
